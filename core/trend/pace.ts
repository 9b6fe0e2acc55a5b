import { daysFrom, type DatedValue } from './dated.ts';
import type { Pace } from '../water/limits.ts';

/** Two readings between which the value moved faster than the usual limit a day. */
export interface FastMove {
  readonly from: DatedValue;
  readonly to: DatedValue;
  readonly days: number;
  /** Rise (positive) or fall, in the unit of the values. */
  readonly change: number;
  /** Change a day; over less than a day, the whole change. */
  readonly perDay: number;
  /** Whether it stays too fast when the kit's error is taken off. */
  readonly sure: boolean;
}

/**
 * Moves faster than the usual pace, up or down, one at most for each later reading: the fastest.
 *
 * Each reading is compared with the one before and with all others in the day before it. The limit is one for a day, so
 * over less than a day the change itself counts and is not scaled up: two tests of one hour are no race. A change
 * the kit cannot tell from none is left out. Sees only what is logged; what happened between readings may be faster.
 *
 * Check: 8.0 then 9.5 dKH in one day, limit 1 -> 1.5 a day; in two days -> none.
 *
 * @param readings oldest first
 * @param pace most a day that is usual in either direction, above 0 (limits.ts)
 * @param resolution what the kit can tell apart
 */
export function fastMoves(readings: readonly DatedValue[], pace: Pace, resolution: number): FastMove[] {
  return readings.flatMap((to, index) => {
    const moves = earlierOf(readings, index)
      .map((from) => moveOf(from, to, pace, resolution))
      .filter(
        ({ change, perDay }) =>
          Math.abs(change) > resolution * (1 + 1e-9) && Math.abs(perDay) > limitOf(change, pace) * (1 + 1e-9),
      );
    const fastest = moves.sort((a, b) => Math.abs(b.perDay) - Math.abs(a.perDay))[0];
    return fastest === undefined ? [] : [fastest];
  });
}

/** The reading before, and those of the day before. */
function earlierOf(readings: readonly DatedValue[], index: number): readonly DatedValue[] {
  const now = readings[index];
  if (now === undefined) return [];
  let first = index - 1;
  while (first > 0 && daysFrom(readings[first - 1]?.atMs ?? 0, now.atMs) <= 1) first--;
  return readings.slice(Math.max(0, first), index);
}

function moveOf(from: DatedValue, to: DatedValue, pace: Pace, resolution: number): FastMove {
  const days = daysFrom(from.atMs, to.atMs);
  const change = to.value - from.value;
  const over = Math.max(1, days);
  const sure = Math.abs(change) - resolution > limitOf(change, pace) * over;
  return { from, to, days, change, perDay: change / over, sure };
}

/** What is usual in the direction of a change. */
function limitOf(change: number, { up, down }: Pace): number {
  return change > 0 ? up : down;
}
