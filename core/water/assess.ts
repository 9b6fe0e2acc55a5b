import { parameter, type ParameterId } from './parameter.ts';

/** Words a reading is judged by. "doubtful" comes before any other: retest before acting. */
export type Verdict = 'doubtful' | 'low' | 'high' | 'fine';

export interface Judged {
  readonly parameter: ParameterId;
  /** In the parameter's own unit. */
  readonly value: number;
  readonly verdict: Verdict;
  /** For ions that follow salinity: what it would read at S = 35, where salinity is known and off. */
  readonly at35?: number;
}

/**
 * Practical salinity in which a reef tank is usually kept: 35 is the aim, and 1.025 (32.6 to 33.2, by the scale of
 * the instrument) is kept by many. Common practice, no source.
 */
export const SALINITY_TARGET = [32.5, 36.5] as const;

/** Ions that rise and fall with salinity in fixed proportion (m08: constant composition). */
const CONSERVATIVE: ReadonlySet<ParameterId> = new Set([
  'calcium',
  'magnesium',
  'potassium',
  'strontium',
  'bromide',
]);

/**
 * Judges readings against where they can be believed and where reefs are usually kept (both in parameter.ts,
 * common practice). Where salinity is outside its range, an ion that follows it is judged at S = 35, x 35/S, so
 * that low salinity is not read as low calcium. 560 mg/L calcium at S 31.9 -> 614 at 35, doubtful.
 *
 * Order of the result is the order to act in: doubtful readings, then what is low or high, then the rest.
 *
 * @param readings values in each parameter's own unit
 * @param practicalSalinity 2 to 42, or undefined when not measured
 */
export function judge(
  readings: readonly { readonly parameter: ParameterId; readonly value: number }[],
  practicalSalinity?: number,
): Judged[] {
  const order: readonly Verdict[] = ['doubtful', 'high', 'low', 'fine'];
  return readings
    .map(({ parameter: id, value }) => judgeOne(id, value, practicalSalinity))
    .sort((a, b) => order.indexOf(a.verdict) - order.indexOf(b.verdict));
}

/** Whether a practical salinity is where reef tanks are usually kept. */
export function usual(practicalSalinity: number): boolean {
  return practicalSalinity >= SALINITY_TARGET[0] && practicalSalinity <= SALINITY_TARGET[1];
}

function judgeOne(id: ParameterId, value: number, practicalSalinity: number | undefined): Judged {
  const { plausible, target } = parameter(id);
  const off =
    CONSERVATIVE.has(id) &&
    practicalSalinity !== undefined &&
    practicalSalinity > 0 &&
    !usual(practicalSalinity);
  const at35 = off ? (value * 35) / practicalSalinity : value;
  return { parameter: id, value, verdict: verdictOf(at35, plausible, target), ...(off ? { at35 } : {}) };
}

function verdictOf(
  value: number,
  plausible: readonly [number, number],
  target: readonly [number, number],
): Verdict {
  if (value < plausible[0] || value > plausible[1]) return 'doubtful';
  if (value < target[0]) return 'low';
  return value > target[1] ? 'high' : 'fine';
}
