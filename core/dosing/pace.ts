import { inRange } from '../problem.ts';

/** A rise split over whole days in equal parts. */
export interface Split {
  readonly days: number;
  /** Rise on each of the days, in the unit of the rise. */
  readonly risePerDay: number;
}

/** Guards the count of days against 2.0000000001 from a subtraction such as 8.4 - 7.4. */
const EPSILON = 1e-9;

/**
 * Splits a rise into the fewest equal daily parts that keep to `mostPerDay`; both in the same unit. A rise of 0 takes
 * no day.
 *
 * Check: 1.2 dKH at 1 a day -> 2 days of 0.6; 200 mg/L at 100 -> 2 of 100; 70 at 50 -> 2 of 35. The paces themselves
 * are common practice, no source (see parameter.ts).
 *
 * @throws Problem for a pace that is not above 0 or a rise that would take more than 365 days.
 */
export function splitByPace(rise: number, mostPerDay: number): Split {
  inRange('pace', mostPerDay, Number.MIN_VALUE, Number.MAX_VALUE, 'a day');
  const days = Math.ceil(
    inRange('rise', rise, 0, mostPerDay * MOST_DAYS, 'at that pace, within a year') / mostPerDay - EPSILON,
  );
  return days <= 0 ? { days: 0, risePerDay: 0 } : { days, risePerDay: rise / days };
}

const MOST_DAYS = 365;
