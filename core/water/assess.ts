import type { LoggableId } from './loggable.ts';
import { parameter, type ParameterId } from './parameter.ts';

/**
 * Words a reading is judged by. "urgent" and "doubtful" come before any other: act now, and retest before acting.
 * "at the edge" is outside its range by no more than the instrument can be off: nothing to act on.
 */
export type Verdict = 'urgent' | 'doubtful' | 'low' | 'high' | 'at the edge' | 'fine';

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
  /** When it was tested; readings without it are of one time. */
  readonly atMs?: number;
}

/** Readings further apart were not taken in the same water: project rule. */
const SAME_WATER_MS = 24 * 60 * 60 * 1000;

/** Where a reading should lie, in the parameter's own unit. */
export type RangeOf = (id: LoggableId) => readonly [number, number];

/**
 * Practical salinity that passes without remark: the widest that is common practice, no source. It is kept so with soft
 * corals and is taken where the kind of tank is not known; narrower with stony ones (targets.ts). 1.025, which many aim
 * at, passes on 25/25 (33.2 by fm83); on 20/20 (32.9) and 60F/60F (32.6) it is at the edge.
 */
export const SALINITY_TARGET = [33, 36] as const;

/**
 * How far a hobby refractometer or hydrometer can be off the truth: 1, which is 0.0008 SG (common practice, no source).
 * More than the steps it shows (loggable.ts), which only tell two of its own readings apart.
 */
const SALINITY_ERROR = 1;

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

/** °C beyond which most reef animals are harmed within a day: common practice, no source. */
export const BEARABLE_C = [20, 31] as const;

const EPSILON = 1e-9;

/** Whether there is something to do about a reading. */
export function isOff({ verdict }: Judged): boolean {
  return verdict !== 'fine' && verdict !== 'at the edge';
}

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
 * out). Where a salinity among them is low or high but believable, an ion that follows it is judged at S = 35,
 * x 35/S, so that low salinity is not read as low calcium, if both were tested within a day. 560 mg/L calcium at S 31.9 -> 614 at 35, doubtful.
 *
 * Ammonia that a kit can see is urgent whatever else is off, and so is a temperature outside `BEARABLE_C`. The result is in the order to act in: urgent, doubtful,
 * then what is low or high by `ACT_ORDER`, then what is at the edge, then the rest.
 */
export function judge(readings: readonly Value[], rangeOf: RangeOf = usualRange): Judged[] {
  const order: readonly (readonly Verdict[])[] = [
    ['urgent'],
    ['doubtful'],
    ['low', 'high'],
    ['at the edge'],
    ['fine'],
  ];
  const rank = ({ verdict, parameter: id }: Judged): number =>
    order.findIndex((verdicts) => verdicts.includes(verdict)) * ACT_ORDER.length + ACT_ORDER.indexOf(id);
  const salinity = readings.find((reading) => reading.parameter === 'salinity' && isPlausible(reading));
  const near = salinity === undefined || isNear(salinity.value, rangeOf('salinity'));
  const known = near ? undefined : salinity;
  return readings
    .map((reading) =>
      judgeOne(reading, rangeOf(reading.parameter), sameWater(reading, known) ? known?.value : undefined),
    )
    .sort((a, b) => rank(a) - rank(b));
}

function sameWater(one: Value, other: Value | undefined): boolean {
  if (one.atMs === undefined || other?.atMs === undefined) return true;
  return Math.abs(one.atMs - other.atMs) <= SAME_WATER_MS;
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
  if (id === 'temperature' && !isInside(value, BEARABLE_C)) return 'urgent';
  if (isInside(value, range)) return 'fine';
  if (id === 'salinity' && isNear(value, range)) return 'at the edge';
  return value < range[0] ? 'low' : 'high';
}

/** Inside a salinity range, or outside by no more than the instrument can be off. */
function isNear(salinity: number, [low, high]: readonly [number, number]): boolean {
  return isInside(salinity, [low - SALINITY_ERROR, high + SALINITY_ERROR]);
}

function isInside(value: number, [low, high]: readonly [number, number]): boolean {
  return value >= low - EPSILON && value <= high + EPSILON;
}
