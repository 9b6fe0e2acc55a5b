import { suddenUse, type UseChange } from '../../core/trend/change.ts';
import { useBetween } from '../../core/trend/daily-use.ts';
import { MS_PER_DAY } from '../../core/trend/dated.ts';
import { MOST_READINGS, type Use, USE_DAYS, useOf } from '../../core/trend/use.ts';
import { Problem } from '../../core/problem.ts';
import { printed } from '../../core/log/value.ts';
import { significant } from '../../core/quantity/format.ts';
import { followsSalinity } from '../../core/water/assess.ts';
import { isBelievable } from '../../core/water/limits.ts';
import { parameter, type ParameterId } from '../../core/water/parameter.ts';
import type { OwnContext } from '../command.ts';
import type { Addition, Keep, Reading, Tank } from '../keep.ts';
import { alertFor } from './alerts.ts';
import { inZone } from '../zone.ts';
import type { Instant } from '../instants.ts';
import { momentsOf, spanWords, timeOf, zoneLine } from './words.ts';
import { say } from '../../core/wording/say.ts';

/** Everything logged of one parameter in a span that bears on what the tank uses of it. */
export interface Logged {
  readonly readings: readonly Reading[];
  readonly additions: readonly Addition[];
  readonly use: Use | undefined;
}

/** The newest readings since `fromMs`, what was added since the first of them, and the use both come to. */
export function loggedSince(keep: Keep, tank: Tank, id: ParameterId, fromMs: number, toMs: number): Logged {
  const query = { fromMs, toMs, most: MOST_READINGS };
  const readings = keep.readings(tank.id, { ...query, parameter: id });
  const sinceMs = Math.max(fromMs, readings[0]?.atMs ?? fromMs);
  const additions = keep.additions(tank.id, { fromMs: sinceMs, toMs }).filter((one) => one.parameter === id);
  const salinity = followsSalinity(id)
    ? {
        readings: keep
          .readings(tank.id, { ...query, parameter: 'salinity' })
          .filter(({ value }) => isBelievable('salinity', value)),
        resolution: parameter('salinity').kitResolution,
      }
    : undefined;
  const { kitResolution: resolution } = parameter(id);
  const believed = readings.filter(({ value }) => isBelievable(id, value));
  const use = useOf({ readings: believed, additions, resolution, salinity });
  return { readings, additions, use };
}

/** What the log says of the use of one parameter, in its own unit. */
export interface LoggedUse {
  readonly use: Use;
  readonly change: UseChange | undefined;
  /** The sentence where the last reading moved faster than is usual. */
  readonly alert: string | undefined;
  readonly read: readonly string[];
  /** The moments that `read` tells. */
  readonly instants: readonly Instant[];
}

/**
 * The use by all readings of the last 90 days and everything logged as added between them, and whether the last
 * interval is out of line. A reading nobody should believe is returned instead where nothing is left without it.
 *
 * @throws Problem where the log has no two readings half a day or more apart.
 */
export function loggedUse(keep: Keep, tank: Tank, id: ParameterId, context: OwnContext): LoggedUse | Reading {
  const { kitResolution: resolution, label } = parameter(id);
  const here = inZone(context, tank);
  const logged = loggedSince(keep, tank, id, context.nowMs - USE_DAYS * MS_PER_DAY, context.nowMs);
  const believed = logged.readings.filter(({ value }) => isBelievable(id, value));
  const doubted = logged.readings.filter(({ value }) => !isBelievable(id, value));
  const { use, additions } = logged;
  const [before, now] = [believed[0], believed.at(-1)];
  if (use === undefined || before === undefined || now === undefined) {
    const [last] = doubted.slice(-1);
    if (last !== undefined) return last;
    throw new Problem(say('log.logHasNoTwo', { name: tank.name, label }), {
      field: 'before',
      hint: say('log.logAnotherOneLog'),
    });
  }
  const show = (reading: Reading): string =>
    `${printed(id, reading.value, tank.units)} at ${timeOf(reading.atMs, here)}`;
  const most = use.count === 2 ? '' : `, ${use.count} readings in all`;
  return {
    use,
    change: suddenUse(useBetween(believed, additions, resolution), resolution),
    alert: alertFor(now, now.atMs, believed.slice(0, -1), tank),
    instants: momentsOf([before.atMs, now.atMs], here),
    read: [
      `from the log of ${tank.name}: ${label} ${show(before)}, then ${show(now)}, ${spanWords(now.atMs - before.atMs)} apart${most} (${zoneLine(here)})`,
      addedLine(id, use),
      ...(doubted.length === 0
        ? []
        : [
            `left out as hard to believe: ${doubted.map(({ value }) => printed(id, value, tank.units)).join(', ')}`,
          ]),
      ...(use.atOneSalinity ? ['salinity moved meanwhile, so each reading is taken to one salinity'] : []),
      'I only see what is logged: a dose that is not in the log makes the use look smaller',
    ],
  };
}

function addedLine(id: ParameterId, { added, additions }: Use): string {
  if (additions === 0) return 'nothing logged as added in between';
  return `added in between: ${significant(added, 3)} ${parameter(id).unit} in ${additions} logged ${additions === 1 ? 'dose' : 'doses'}`;
}
