import { kendallCritical95 } from './kendall.ts';
import { median, medianInPlace, valueOfRank } from './median.ts';
import type { Interval, Point, TrendLine } from './point.ts';

/** More points than this make too many pairs; the caller thins first. */
export const MOST_ROBUST = 1000;

/**
 * Theil-Sen line: the slope is the median of the slopes of all pairs of points at different times, so that a few wild
 * readings hardly move it (up to 29 % of them).
 *
 * Interval (Sen 1968, J. Am. Stat. Assoc. 63:1379-1389; Hollander & Wolfe, Nonparametric Statistical Methods, section
 * on the slope; both from memory): of the N sorted slopes the M-th from either end, M = (N - C) / 2, with C of
 * `kendallCritical95`. The line goes through (median day, median of value - slope * (day - median day)). Its range
 * is the fan of lines with slopes in the interval through that same point: it shows how sure the slope is, not the
 * level.
 *
 * Check: times 1, 2, 3, 4, 10, 12, 18 with 9, 15, 19, 20, 45, 55, 78 -> slope 4 (Sen's example, from memory).
 *
 * @returns undefined for fewer than two points at different times.
 */
export function theilSen(points: readonly Point[]): TrendLine | undefined {
  if (points.length > MOST_ROBUST) throw new Error(`at most ${MOST_ROBUST} points, not ${points.length}`);
  const slopes = pairSlopes(points);
  if (slopes.length === 0) return undefined;
  const slopePerDay = medianInPlace(slopes);
  const pivot = median(points.map(({ day }) => day));
  const level = median(points.map(({ day, value }) => value - slopePerDay * (day - pivot)));
  const slope = rankInterval(slopes, points);
  return {
    method: 'robust',
    count: points.length,
    slopePerDay,
    slope,
    at: (day) => level + slopePerDay * (day - pivot),
    bandAt: (day) => {
      if (slope === undefined) return undefined;
      const ends = [level + slope.low * (day - pivot), level + slope.high * (day - pivot)] as const;
      return { low: Math.min(...ends), high: Math.max(...ends) };
    },
  };
}

/** Slopes of all pairs at different times, in no order. */
function pairSlopes(points: readonly Point[]): Float64Array {
  const days = Float64Array.from(points, ({ day }) => day);
  const values = Float64Array.from(points, ({ value }) => value);
  const slopes = new Float64Array((points.length * (points.length - 1)) / 2);
  let count = 0;
  for (let i = 0; i < points.length; i++) {
    for (let j = i + 1; j < points.length; j++) {
      const apart = (days[j] ?? 0) - (days[i] ?? 0);
      if (apart !== 0) slopes[count++] = ((values[j] ?? 0) - (values[i] ?? 0)) / apart;
    }
  }
  return slopes.subarray(0, count);
}

function rankInterval(slopes: Float64Array, points: readonly Point[]): Interval | undefined {
  const sizes = new Map<number, number>();
  for (const { day } of points) sizes.set(day, (sizes.get(day) ?? 0) + 1);
  const critical = kendallCritical95(points.length, [...sizes.values()]);
  if (critical === undefined) return undefined;
  const rank = Math.floor((slopes.length - critical) / 2);
  if (rank < 1) return undefined;
  return { low: valueOfRank(slopes, rank - 1), high: valueOfRank(slopes, slopes.length - rank) };
}
