import type { LoggableId } from './loggable.ts';
import { parameter, type ParameterId } from './parameter.ts';

/** Words a reading is judged by. "urgent" and "doubtful" come before any other: act now, and retest before acting. */
export type Verdict = 'urgent' | 'doubtful' | 'low' | 'high' | 'fine';

export interface Judged {
  readonly parameter: LoggableId;
  /** In the parameter's own unit. */
  readonly value: number;
  /** Where it should lie. */
  readonly range: readonly [number, number];
  readonly verdict: Verdict;
  /** For ions that follow salinity: what it would read at S = 35, where salinity is known and off. */
  readonly at35?: number;
}

/** A value of one parameter, in its own unit (salinity: practical salinity). */
export interface Value {
  readonly parameter: LoggableId;
  readonly value: number;
}

/** Where a reading should lie, in the parameter's own unit. */
export type RangeOf = (id: LoggableId) => readonly [number, number];

/**
 * Practical salinity that passes without remark. Common practice, no source, is 34 to 36 (33 to 36 with soft corals);
 * this range is wider by our own choice, so that 1.025 (32.6 to 33.2, by the scale of the instrument) passes.
 */
export const SALINITY_TARGET = [32.5, 36.5] as const;

/** Practical salinity a reef tank can be in; outside it the reading is doubted. Reefs occur at 28.7 to 40.4 (Guan et
 * al. 2015, PLoS ONE 10:e0128831); the bounds here leave some room for an accident. */
const SALINITY_PLAUSIBLE = [20, 42] as const;

/** Ions that rise and fall with salinity in fixed proportion (m08: constant composition). */
const CONSERVATIVE: ReadonlySet<LoggableId> = new Set<ParameterId>([
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
const ACT_ORDER: readonly LoggableId[] = [
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

const EPSILON = 1e-9;

/** The usual range of everything that can be logged: common practice, see parameter.ts. */
export function usualRange(id: LoggableId): readonly [number, number] {
  return id === 'salinity' ? SALINITY_TARGET : parameter(id).target;
}

/** Where a reading can be believed, in the parameter's own unit. */
export function plausibleRange(id: LoggableId): readonly [number, number] {
  return id === 'salinity' ? SALINITY_PLAUSIBLE : parameter(id).plausible;
}

/** Whether a reading lies where it can be believed. */
export function isPlausible({ parameter: id, value }: Value): boolean {
  return isInside(value, plausibleRange(id));
}

/** Whether salinity, where it is off, moves this one with it. */
export function followsSalinity(id: LoggableId): boolean {
  return CONSERVATIVE.has(id);
}

/**
 * Judges readings against where they can be believed and where they should be (`rangeOf`; the usual ranges where left
 * out). Where a salinity among them is outside its range but believable, an ion that follows it is judged at S = 35,
 * x 35/S, so that low salinity is not read as low calcium. 560 mg/L calcium at S 31.9 -> 614 at 35, doubtful.
 *
 * Ammonia that a kit can see is urgent whatever else is off. The result is in the order to act in: urgent, doubtful,
 * then what is low or high by `ACT_ORDER`, then the rest.
 */
export function judge(readings: readonly Value[], rangeOf: RangeOf = usualRange): Judged[] {
  const order: readonly (readonly Verdict[])[] = [['urgent'], ['doubtful'], ['low', 'high'], ['fine']];
  const rank = ({ verdict, parameter: id }: Judged): number =>
    order.findIndex((verdicts) => verdicts.includes(verdict)) * ACT_ORDER.length + ACT_ORDER.indexOf(id);
  const salinity = readings.find(
    (reading) => reading.parameter === 'salinity' && isPlausible(reading),
  )?.value;
  const off = salinity !== undefined && !isInside(salinity, rangeOf('salinity'));
  return readings
    .map((reading) => judgeOne(reading, rangeOf(reading.parameter), off ? salinity : undefined))
    .sort((a, b) => rank(a) - rank(b));
}

/** `salinity` only where it is off. */
function judgeOne(
  { parameter: id, value }: Value,
  range: readonly [number, number],
  salinity: number | undefined,
): Judged {
  const at35 = salinity !== undefined && CONSERVATIVE.has(id) ? (value * 35) / salinity : undefined;
  const verdict = verdictOf(id, at35 ?? value, range);
  return { parameter: id, value, range, verdict, ...(at35 === undefined ? {} : { at35 }) };
}

function verdictOf(id: LoggableId, value: number, range: readonly [number, number]): Verdict {
  if (!isInside(value, plausibleRange(id))) return 'doubtful';
  if (id === 'ammonia' && value >= parameter(id).kitResolution - EPSILON) return 'urgent';
  if (isInside(value, range)) return 'fine';
  return value < range[0] ? 'low' : 'high';
}

function isInside(value: number, [low, high]: readonly [number, number]): boolean {
  return value >= low - EPSILON && value <= high + EPSILON;
}
