import { inRange } from '../problem.ts';

/** Two readings of one parameter and what was added between them, all in one unit per litre. */
export interface Readings {
  readonly before: number;
  readonly now: number;
  /** Days between the readings. */
  readonly days: number;
  /** Rise that everything added in between would have made on its own; 0 when nothing was. */
  readonly added: number;
  /** What the kit can tell apart. */
  readonly resolution: number;
}

/** Use per day, with the range the kit leaves open. */
export interface DailyUse {
  readonly perDay: number;
  readonly low: number;
  readonly high: number;
  /** Whether the whole change is within what the kit can tell apart, so that it may be nothing. */
  readonly withinError: boolean;
}

/**
 * What the tank uses a day: (before - now + added) / days.
 *
 * Each reading may be off by half the kit's resolution, so the difference may be off by a whole one, spread over the
 * days. `days` 0.02 to 400, readings and `added` 0 or more. Negative when the value rose by more than was added.
 * Check: 9.3 -> 7.5 dKH in 2 days, nothing added, 0.3 dKH kit -> 0.9 a day, 0.75 to 1.05. Doubt: two different kits
 * differ by more than either one's resolution; the volume behind `added`.
 *
 * @throws Problem outside the ranges.
 */
export function dailyUse(readings: Readings): DailyUse {
  const { before, now, added, resolution } = readings;
  const days = inRange('over', readings.days, 0.02, 400, 'days');
  const used = before - now + added;
  return {
    perDay: used / days,
    low: (used - resolution) / days,
    high: (used + resolution) / days,
    withinError: Math.abs(used) <= resolution * (1 + 1e-9),
  };
}
