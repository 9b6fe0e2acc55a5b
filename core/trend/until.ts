/** Days until a level is reached, and the days between which it is by the error of the reading. */
export interface Until {
  readonly days: number;
  readonly low: number;
  readonly high: number;
}

/**
 * Days until a level that moves `perDay` (negative: it falls) gets from `now` to `goal`, all in one unit. The reading may
 * be off by `error` either way, so the way may be that much shorter or longer. A straight line is a model: what lives in
 * the tank uses less as the level falls.
 * Check: 8.4 falling 0.3 a day to 7 -> 4.667; 12 rising 4 a week to 20 -> 14; error 0.15 of the first -> 4.167 to 5.167.
 *
 * @returns undefined where it stands still or moves away from the goal.
 */
export function daysUntil(now: number, goal: number, perDay: number, error = 0): Until | undefined {
  const days = (goal - now) / perDay;
  if (!Number.isFinite(days) || days < 0) return undefined;
  const off = error / Math.abs(perDay);
  return { days, low: Math.max(0, days - off), high: days + off };
}
