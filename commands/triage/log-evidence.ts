import { NEW_TANK_DAYS } from '../../core/care/test-plan.ts';
import type { Found } from '../../core/care/symptoms/rank.ts';
import { printed } from '../../core/log/value.ts';
import { judge } from '../../core/water/assess.ts';
import { MS_PER_DAY } from '../../core/trend/dated.ts';
import { parameter, type ParameterId } from '../../core/water/parameter.ts';
import type { OwnContext } from '../command.ts';
import { FRESH_DAYS, isFresh } from '../fresh.ts';
import type { Keep, Reading, Tank } from '../keep.ts';
import { rangesOf } from '../log/ranges.ts';
import { timeOf } from '../log/words.ts';
import { signOf } from './sign-of.ts';

/** In a longer time the same move is no swing. */
export const WEEK_DAYS = 7;

/** More than this within a week is a swing, in the parameter's own unit: own choice, near the usual pace of a day. */
export const SWINGS = [
  ['alkalinity', 1, 'alkalinity moved'],
  ['salinity', 1.5, 'salinity moved'],
  ['temperature', 2, 'temperature moved'],
] as const;

/** Signs in the readings of the last days, in what moved within a week, and in the age of the tank. */
export function logEvidence(keep: Keep, tank: Tank, context: OwnContext): readonly Found[] {
  const { nowMs } = context;
  const latest = keep.latest(tank.id).filter((one) => isFresh(one, nowMs));
  const times = new Map(latest.map((one) => [one.parameter, one.atMs]));
  const off = judge(latest, rangesOf(tank)).flatMap((one): Found[] => {
    const sign = signOf(one);
    if (sign === undefined) return [];
    const { parameter: id, value } = one;
    const at = timeOf(times.get(id) ?? nowMs, context);
    return [{ sign, text: `your log: ${parameter(id).label} ${printed(id, value, tank.units)} on ${at}` }];
  });
  return [...off, ...SWINGS.flatMap(([id, most, sign]) => swing(id, most, sign)), ...young()];

  function swing(id: ParameterId, most: number, sign: Found['sign']): readonly Found[] {
    const readings = keep.readings(tank.id, {
      parameter: id,
      fromMs: nowMs - WEEK_DAYS * MS_PER_DAY,
      toMs: nowMs,
    });
    const [first, second] = extremes(readings);
    if (first === undefined || second === undefined || Math.abs(first.value - second.value) <= most)
      return [];
    const [from, to] = [first, second].map(({ value }) => printed(id, value, tank.units));
    return [{ sign, text: `your log: ${parameter(id).label} went from ${from} to ${to} within a week` }];
  }

  function young(): readonly Found[] {
    if (tank.startedOn === undefined) return [];
    const days = Math.floor((nowMs - Date.parse(`${tank.startedOn}T00:00:00Z`)) / MS_PER_DAY);
    if (!(days >= 0 && days < NEW_TANK_DAYS)) return [];
    return [{ sign: 'young tank', text: `${tank.name} is ${days} days old` }];
  }
}

/** The lowest and the highest, the earlier one first. */
function extremes(readings: readonly Reading[]): readonly Reading[] {
  const byValue = [...readings].sort((a, b) => a.value - b.value);
  return [byValue[0], byValue.at(-1)]
    .filter((one): one is Reading => one !== undefined)
    .sort((a, b) => a.atMs - b.atMs);
}

/** Names what was too old to be used. */
export function oldReadings(keep: Keep, tank: Tank, nowMs: number): readonly string[] {
  const old = keep.latest(tank.id).filter((one) => !isFresh(one, nowMs));
  if (old.length === 0) return [];
  const names = old.map(({ parameter: id }) => parameter(id).label).join(', ');
  return [`older than ${FRESH_DAYS} days: ${names}`];
}
