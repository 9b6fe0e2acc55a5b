import type { UseBetween } from './daily-use.ts';
import { median, medianDeviation } from './median.ts';

/** Uses needed before the last one for "usual" to mean something: common practice, no source. */
const LEAST_EARLIER = 5;
/** How many robust standard deviations count as sudden: common practice, no source. */
const SUDDEN = 3;
/** Makes a median absolute deviation a standard deviation, for normal errors: 1 / 0.6745. */
const TO_SD = 1.4826;

export interface UseChange {
  readonly direction: 'up' | 'down';
  /** Use per day of the last interval. */
  readonly perDay: number;
  /** Median use per day of the earlier ones. */
  readonly usualPerDay: number;
  readonly earlier: number;
}

/**
 * Tells when the last use per day is out of line with the earlier ones: further from their median than three robust
 * standard deviations (1.4826 times the median absolute deviation) and than the kit's error over that interval.
 *
 * Needs five earlier uses. Doubt: one wrong reading makes a false alarm, so the next step is to test again.
 *
 * @param uses oldest first
 * @param resolution what the kit can tell apart, in the unit of the values
 */
export function suddenUse(uses: readonly UseBetween[], resolution: number): UseChange | undefined {
  const last = uses.at(-1);
  const earlier = uses.slice(0, -1).map(({ perDay }) => perDay);
  if (last === undefined || earlier.length < LEAST_EARLIER) return undefined;
  const usualPerDay = median(earlier);
  const allowed = Math.max(SUDDEN * TO_SD * medianDeviation(earlier), resolution / last.days);
  const difference = last.perDay - usualPerDay;
  if (Math.abs(difference) <= allowed * (1 + 1e-9)) return undefined;
  return {
    direction: difference > 0 ? 'up' : 'down',
    perDay: last.perDay,
    usualPerDay,
    earlier: earlier.length,
  };
}
