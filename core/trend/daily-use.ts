import { dailyUse, type DailyUse } from '../dosing/use.ts';
import { daysFrom, type DatedRise, type DatedValue } from './dated.ts';

/** Use per day between two readings. Negative where the value rose by more than was added. */
export interface UseBetween extends DailyUse {
  readonly fromMs: number;
  readonly toMs: number;
  readonly days: number;
  /** Rise that everything added in between would have made on its own. */
  readonly added: number;
}

/** Readings closer together than this say nothing of a day's use: common practice, no source. */
const LEAST_DAYS = 0.5;
/** The range of `dailyUse`. */
const MOST_DAYS = 400;

/**
 * Use per day from each reading to the next, with what was added in between added back:
 * (before - now + added) / days, with the kit's error (core/dosing/use.ts).
 *
 * An addition counts from its own instant on: at the instant of a reading it comes after the reading. A reading less
 * than half a day after the last one used is passed over; a gap of more than 400 days gives no use.
 *
 * @param readings oldest first
 * @param resolution what the kit can tell apart, in the unit of the values
 */
export function useBetween(
  readings: readonly DatedValue[],
  additions: readonly DatedRise[],
  resolution: number,
): UseBetween[] {
  const found: UseBetween[] = [];
  let [before] = readings;
  for (const now of readings.slice(1)) {
    if (before === undefined) break;
    const days = daysFrom(before.atMs, now.atMs);
    if (days < LEAST_DAYS) continue;
    const added = addedFrom(additions, before.atMs, now.atMs);
    if (days <= MOST_DAYS) {
      const use = dailyUse({ before: before.value, now: now.value, days, added, resolution });
      found.push({ ...use, fromMs: before.atMs, toMs: now.atMs, days, added });
    }
    before = now;
  }
  return found;
}

/**
 * Readings as they would be had nothing been added since the first one: the slope of these, with its sign turned, is
 * the use per day. Rests on the same mass balance as `useBetween`.
 */
export function withoutAdditions(
  readings: readonly DatedValue[],
  additions: readonly DatedRise[],
): DatedValue[] {
  const [first] = readings;
  if (first === undefined) return [];
  return readings.map(({ atMs, value }) => ({ atMs, value: value - addedFrom(additions, first.atMs, atMs) }));
}

/** What was added at or after `fromMs` and before `toMs`. */
function addedFrom(additions: readonly DatedRise[], fromMs: number, toMs: number): number {
  return additions.reduce((sum, { atMs, rise }) => (atMs >= fromMs && atMs < toMs ? sum + rise : sum), 0);
}
