import type { UrgentId } from '../care/urgent/cards.ts';
import { levelCard } from '../care/urgent/level-card.ts';
import { sideBeyond } from '../care/urgent/side.ts';
import { readLogged } from '../log/value.ts';
import { Problem } from '../problem.ts';
import { limitsOf, sideOf, urgentSide, type Range, type Side } from '../water/limits.ts';
import type { ParameterId } from '../water/parameter.ts';
import { levelText, parameterOf } from './levels-said.ts';
import { isLongPast } from './long-past.ts';
import { met, metBefore } from './met.ts';
import type { Reading } from './reading.ts';
import type { Said } from './said.ts';

/** A level of the tank that is an emergency by itself, and the card for it. */
export interface Danger {
  readonly card: UrgentId;
  readonly of: ParameterId;
  readonly side: Side;
  /** Number and unit, ready to be read. */
  readonly text: string;
}

/** In the order to act in: heat and cold kill within hours, the others within a day. */
const ORDER = ['temperature', 'ammonia', 'salinity', 'alkalinity', 'ph'] as const;

/**
 * Emergencies by number alone, the most pressing first: what each level reads now is at or beyond the urgent limits
 * (water/limits.ts), or beyond every scale in every unit it can be in. Levels of other water, limits, and what is only
 * supposed, told of others, planned from or over are none. Checks: 91 °F is 32.8 °C, hot (from 30); 1.014 is 18.6 ppt
 * by fm83, low (to 28); 14 dKH high; 0.25 mg/L of ammonia high; a bare 60 of alkalinity can be 168 dKH or 3.4: none.
 */
export function dangersIn(reading: Pick<Reading, 'scanned' | 'said' | 'kinds'>): readonly Danger[] {
  const { scanned } = reading;
  if (met(scanned, 'manner.otherPerson') && met(scanned, 'manner.past')) return [];
  return ORDER.flatMap((of): Danger[] => {
    const said = stateOf(reading, of);
    if (said === undefined || isElsewhere(reading, of) || isUnreal(reading, said)) return [];
    if (of === 'temperature' && !isWarmth(reading, said)) return [];
    const text = levelText(said.number, of, '');
    const side = dangerSide(of, text) ?? (of === 'temperature' ? strained(reading, text) : undefined);
    const card = side === undefined ? undefined : levelCard(of, side);
    return side === undefined || card === undefined ? [] : [{ card, of, side, text }];
  });
}

/** The side on which a level is urgent in each unit it can be in; undefined where in any of them it is not. */
export function dangerSide(of: ParameterId, text: string): Side | undefined {
  const [side, ...others] = new Set(unitsOf(of, text).map((written) => sideInUnit(of, written)));
  return others.length === 0 ? side : undefined;
}

/** Below these a number is a difference, and no tank's. Own choice. */
const LEAST_PPT = 10;
const LEAST: Partial<Record<ParameterId, number>> = { salinity: LEAST_PPT, temperature: 4, ph: 4 };

/** A bare number of salinity is ppt or mS/cm: 53 mS/cm is 35 ppt, while 26 is too little as either. */
function unitsOf(of: ParameterId, text: string): readonly string[] {
  return of === 'salinity' && Number(text) >= LEAST_PPT ? [`${text} ppt`, `${text} mS/cm`] : [text];
}

function sideInUnit(of: ParameterId, text: string): Side | undefined {
  try {
    const { value } = readLogged(of, text, of);
    const isDifference = value < (LEAST[of] ?? 0);
    return isDifference ? sideBeyond(of, text) : urgentSide(of, value);
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
    const beyond = sideBeyond(of, text);
    if (of === 'temperature' && beyond === 'low') return undefined;
    if (beyond !== undefined || error.choices.length === 0) return beyond;
    const [side, ...others] = new Set(error.choices.map((choice) => sideInUnit(of, choice)));
    return others.length === 0 ? side : undefined;
  }
}

/** A bare number is of warmth where words say so, or all of it tells of an emergency; more than this is no °F. */
const MOST_BARE_F = 110;

function isWarmth(
  { scanned, kinds }: Pick<Reading, 'scanned' | 'kinds'>,
  { number: { unit, value } }: Said,
): boolean {
  if (unit !== '' && unit !== 'in') return true;
  if (value > MOST_BARE_F) return false;
  const isNamed = scanned.names.some(({ id }) => id === 'temperature');
  return isNamed || kinds[0]?.name === 'urgent-water' || met(scanned, ...WARMTH);
}

const WARMTH = [
  'sums.warmth',
  'manner.unitTemp',
  'gear.heater',
  'gear.chiller',
  'hardware.thermometer',
  'events.overheats',
  'events.chillsDown',
  'times.season',
  'manner.plea',
  'manner.panic',
] as const;

/** The last state said of a parameter: now, or as it was where nothing newer was said. */
function stateOf({ said }: Pick<Reading, 'said'>, of: ParameterId): Said | undefined {
  const mine = said.filter((one) => parameterOf(one.of) === of);
  return mine.findLast(({ part }) => part === 'now') ?? mine.findLast(({ part }) => part === 'was');
}

/** Low salinity that is meant or asked to be raised, and ammonia that feeds a filter before there are animals. */
function isElsewhere(
  { scanned, said, kinds }: Pick<Reading, 'scanned' | 'said' | 'kinds'>,
  of: ParameterId,
): boolean {
  const isPlanned = said.some((one) => parameterOf(one.of) === of && PLANS.has(one.part));
  if (of === 'salinity')
    return isPlanned || met(scanned, 'poisons.hypo', 'hardware.hospitalTank', 'deeds.quarantines');
  if (of !== 'ammonia') return of === 'alkalinity' && isPlanned;
  const isCycle = kinds[0]?.name === 'cycle' || met(scanned, 'events.cycles', 'substances.ammoniaSource');
  return (
    isCycle && !met(scanned, 'lives.stocked', 'lives.dies', 'lives.gasps', 'manner.plea', 'manner.panic')
  );
}

const PLANS: ReadonlySet<string> = new Set(['wanted', 'target', 'change']);

/** Supposed or passed on before it in its sentence, long past, or over and no help asked for. */
function isUnreal({ scanned }: Pick<Reading, 'scanned'>, { part, number: { start } }: Said): boolean {
  if (metBefore(scanned, start, 'manner.hypothesis', 'manner.rumour')) return true;
  const isPast = part === 'was' && met(scanned, 'times.longAgo', 'times.weeksAgo', 'manner.past');
  const isCalm = !met(scanned, 'manner.plea', 'manner.panic');
  return isPast || (isCalm && (isLongPast(scanned, start) || met(scanned, 'manner.over')));
}

/** Where the words sound alarmed, temperature is a danger from a day's pace outside its usual range; own choice. */
const { usual, pace } = limitsOf('temperature');
const STRAINED_C: Range = [usual[0] - (pace?.down ?? 0), usual[1] + (pace?.up ?? 0)];

function strained({ scanned }: Pick<Reading, 'scanned'>, text: string): Side | undefined {
  const isAlarmed = met(
    scanned,
    'manner.plea',
    'manner.panic',
    'lives.dies',
    'lives.gasps',
    'events.overheats',
    'events.chillsDown',
    'events.runsAway',
    'events.breaks',
    'events.stops',
    'events.wentUp',
    'events.wentDown',
    'times.suddenly',
    'times.lastNight',
  );
  if (!isAlarmed) return undefined;
  try {
    return sideOf(readLogged('temperature', text, 'temperature').value, STRAINED_C);
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
    return undefined;
  }
}
