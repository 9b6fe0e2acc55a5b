import { isBelievable, limitsOf, sideOf, urgentSide, type Range } from './limits.ts';
import { asPrinted, type ParameterId } from './parameter.ts';

/**
 * Words a reading is judged by. "urgent" and "doubtful" come before any other: act now, and retest before acting.
 * "at the edge" is outside its range by no more than the instrument can be off: nothing to act on.
 */
export type Verdict = 'urgent' | 'doubtful' | 'low' | 'high' | 'at the edge' | 'fine';

export interface Judged {
  readonly parameter: ParameterId;
  /** As read, in the parameter's own unit. */
  readonly value: number;
  /** Where it should lie. */
  readonly range: Range;
  readonly verdict: Verdict;
  /** For ions that follow salinity, where salinity is known and off: what it would read at S = 35, and is judged by. */
  readonly at35?: number;
}

/** A value of one parameter, in its own unit. */
export interface Value {
  readonly parameter: ParameterId;
  readonly value: number;
  /** When it was tested; readings without it are of one time. */
  readonly atMs?: number;
}

/** Readings further apart were not taken in the same water: project rule. */
const SAME_WATER_MS = 24 * 60 * 60 * 1000;

/** Where a reading should lie, in the parameter's own unit. */
export type RangeOf = (id: ParameterId) => Range;

/** Ions that rise and fall with salinity in fixed proportion (m08: constant composition). */
const CONSERVATIVE: ReadonlySet<ParameterId> = new Set<ParameterId>([
  'calcium',
  'magnesium',
  'potassium',
  'strontium',
  'bromide',
]);

/**
 * The order to act in where several are off: what harms animals within hours, then salinity (it moves the ions with
 * it), temperature, alkalinity, magnesium before calcium, and what bears waiting. Common practice, no source.
 */
const ACT_ORDER: readonly ParameterId[] = [
  'ammonia',
  'salinity',
  'temperature',
  'alkalinity',
  'magnesium',
  'calcium',
  'ph',
  'nitrate',
  'phosphate',
  'nitrite',
  'potassium',
  'strontium',
  'bromide',
  'iodine',
];

const VERDICT_ORDER: readonly (readonly Verdict[])[] = [
  ['urgent'],
  ['doubtful'],
  ['low', 'high'],
  ['at the edge'],
  ['fine'],
];

/** Whether there is something to do about a reading. */
export function isOff({ verdict }: Judged): boolean {
  return verdict !== 'fine' && verdict !== 'at the edge';
}

/** The usual range of everything that is measured. */
export function usualRange(id: ParameterId): Range {
  return limitsOf(id).usual;
}

/** Whether salinity, where it is off, moves this one with it. */
export function followsSalinity(id: ParameterId): boolean {
  return CONSERVATIVE.has(id);
}

/** The first reading of a parameter among several. */
export function readingOf<T extends Value>(readings: readonly T[], id: ParameterId): T | undefined {
  return readings.find(({ parameter }) => parameter === id);
}

/**
 * Judges readings against the table of limits and where they should be (`rangeOf`; the usual ranges where left out).
 * Where a salinity among them is low or high but believable, an ion that follows it is judged at S = 35, x 35/S, so
 * that low salinity is not read as low calcium, if both were tested within a day. 560 mg/L calcium at S 31.9 -> 614 at
 * 35, doubtful.
 *
 * What is urgent is so whether or not it can be believed: a wrong alarm costs a second test. The result is in the order
 * to act in: urgent, doubtful, then what is low or high by `ACT_ORDER`, then what is at the edge, then the rest.
 */
export function judge(readings: readonly Value[], rangeOf: RangeOf = usualRange): Judged[] {
  const rank = ({ verdict, parameter: id }: Judged): number =>
    VERDICT_ORDER.findIndex((verdicts) => verdicts.includes(verdict)) * ACT_ORDER.length +
    ACT_ORDER.indexOf(id);
  const salinity = readingOf(
    readings.filter(({ parameter: id, value }) => isBelievable(id, value)),
    'salinity',
  );
  const isKept = salinity === undefined || isNear('salinity', salinity.value, rangeOf('salinity'));
  const off = isKept ? undefined : salinity;
  return readings
    .map((reading) =>
      judgeOne(reading, rangeOf(reading.parameter), sameWater(reading, off) ? off?.value : undefined),
    )
    .sort((a, b) => rank(a) - rank(b));
}

function sameWater(one: Value, other: Value | undefined): boolean {
  if (one.atMs === undefined || other?.atMs === undefined) return true;
  return Math.abs(one.atMs - other.atMs) <= SAME_WATER_MS;
}

/** `salinity` only where it is off. */
function judgeOne({ parameter: id, value }: Value, range: Range, salinity: number | undefined): Judged {
  const at35 = salinity !== undefined && CONSERVATIVE.has(id) ? (value * 35) / salinity : undefined;
  const verdict = verdictOf(id, asPrinted(id, at35 ?? value), range);
  return { parameter: id, value, range, verdict, ...(at35 === undefined ? {} : { at35 }) };
}

function verdictOf(id: ParameterId, value: number, range: Range): Verdict {
  if (urgentSide(id, value) !== undefined) return 'urgent';
  if (!isBelievable(id, value)) return 'doubtful';
  const side = sideOf(value, range);
  if (side === undefined) return 'fine';
  return isNear(id, value, range) ? 'at the edge' : side;
}

/** Inside a range, or outside by no more than the instrument can be off. */
function isNear(id: ParameterId, value: number, [low, high]: Range): boolean {
  const { error = 0 } = limitsOf(id);
  return sideOf(value, [low - error, high + error]) === undefined;
}
