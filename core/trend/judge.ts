import type { Interval, TrendLine } from './point.ts';

/** What a slope means, with the kit's own error counted in. */
export interface JudgedTrend {
  readonly perDay: number;
  /** 95 % by the scatter of the readings, and never narrower than the kit allows. */
  readonly range: Interval;
  readonly verdict: 'rising' | 'falling' | 'within error';
  /** Whether the range comes from the kit's error alone, because the readings are too few for their scatter. */
  readonly kitOnly: boolean;
}

/**
 * Judges a line: a trend is there when its range leaves zero out.
 *
 * The range joins the 95 % interval of the slope with what the kit leaves open: first and last reading may each be off
 * by half the kit's resolution, so the slope by resolution / days. Readings rounded to one step often make an interval
 * of no width, which would claim more than the kit can tell. Joining the two is this project's own rule.
 *
 * @param line any line with its interval, if there is one
 * @param days from the first to the last reading, above 0
 * @param resolution what the kit can tell apart, in the unit of the values
 */
export function judgeTrend(line: TrendLine, days: number, resolution: number): JudgedTrend {
  const perDay = line.slopePerDay;
  const kit = resolution / days;
  const low = Math.min(line.slope?.low ?? perDay, perDay - kit);
  const high = Math.max(line.slope?.high ?? perDay, perDay + kit);
  const slack = kit * 1e-9;
  const verdict = low > slack ? 'rising' : high < -slack ? 'falling' : 'within error';
  return { perDay, range: { low, high }, verdict, kitOnly: line.slope === undefined };
}

/**
 * Days until a line at `value` that moves `perDay` reaches the edge of the target it moves towards.
 *
 * @returns undefined when it is outside already or does not move.
 */
export function daysToEdge(value: number, perDay: number, target: Interval): number | undefined {
  if (perDay === 0 || value < target.low || value > target.high) return undefined;
  return ((perDay > 0 ? target.high : target.low) - value) / perDay;
}
