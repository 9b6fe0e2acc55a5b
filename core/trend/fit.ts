import type { Point, TrendLine } from './point.ts';
import { studentT95 } from './student.ts';

/** A least squares line with what its error is made of. */
export interface Fit extends TrendLine {
  readonly intercept: number;
  /** Residual standard deviation, n - 2 degrees of freedom; undefined for two points. */
  readonly residualSd: number | undefined;
  /** Standard error of the slope, per day. */
  readonly slopeError: number | undefined;
}

/**
 * Ordinary least squares line, all points of equal weight; errors taken as normal, independent and of one size.
 *
 *   b = Sxy / Sxx,  a = mean y - b mean x,  s^2 = sum of squared residuals / (n - 2),  se(b) = s / sqrt(Sxx)
 *   95 %: b +- t(n - 2) se(b);  line at x: +- t(n - 2) s sqrt(1/n + (x - mean x)^2 / Sxx)
 *
 * Any text on linear regression, e.g. Draper & Smith 1998, Applied Regression Analysis, ch. 1 (from memory).
 * Check: NIST Statistical Reference Datasets, Norris: slope 1.00211681802045, intercept -0.262323073774029.
 * Doubt: readings of one kit taken in a row are not independent, so the true error is rather larger.
 *
 * @returns undefined for fewer than two points at different times.
 */
export function leastSquares(points: readonly Point[]): Fit | undefined {
  const count = points.length;
  const meanDay = mean(points.map(({ day }) => day));
  const meanValue = mean(points.map(({ value }) => value));
  let sxx = 0;
  let sxy = 0;
  for (const { day, value } of points) {
    sxx += (day - meanDay) ** 2;
    sxy += (day - meanDay) * (value - meanValue);
  }
  if (!(sxx > 0)) return undefined;
  const slope = sxy / sxx;
  const at = (day: number): number => meanValue + slope * (day - meanDay);
  const line = { method: 'straight', count, slopePerDay: slope, intercept: at(0), at } as const;
  if (count === 2) {
    return {
      ...line,
      slope: undefined,
      residualSd: undefined,
      slopeError: undefined,
      bandAt: () => undefined,
    };
  }
  const squares = points.map(({ day, value }) => (value - at(day)) ** 2);
  const residualSd = Math.sqrt((mean(squares) * count) / (count - 2));
  const slopeError = residualSd / Math.sqrt(sxx);
  const t = studentT95(count - 2);
  return {
    ...line,
    residualSd,
    slopeError,
    slope: { low: slope - t * slopeError, high: slope + t * slopeError },
    bandAt: (day) => {
      const half = t * residualSd * Math.sqrt(1 / count + (day - meanDay) ** 2 / sxx);
      return { low: at(day) - half, high: at(day) + half };
    },
  };
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
