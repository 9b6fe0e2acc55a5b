import { inRange, Problem } from '../problem.ts';
import { fractionForGoal } from './exchange.ts';

/** One day of a plan: the salinity it ends at and the part of the water swapped for it. */
export interface SwapDay {
  readonly toS: number;
  readonly fraction: number;
}

/** Most days a plan may have, and the largest part of the water swapped in one; own choice. */
const mostDays = 60;
const mostSwap = 0.5;

/**
 * Levels at the end of each day, from `from` (left out) to `to`, in equal steps no larger than `mostADay`; any scale.
 * Check: 1.030 to 1.026 at 0.001 -> 1.029, 1.028, 1.027, 1.026.
 *
 * @throws Problem when that takes more than 60 days.
 */
export function evenDays(from: number, to: number, mostADay: number): readonly number[] {
  const gap = Math.abs(to - from);
  const days = Math.ceil(gap / inRange('pace', mostADay, 1e-5, 10, 'a day') - 1e-6);
  if (days > mostDays) {
    throw new Problem(`At that pace it would take ${days} days.`, {
      field: 'pace',
      limit: `at most ${mostDays} days`,
    });
  }
  return Array.from({ length: days }, (_, day) => from + ((to - from) * (day + 1)) / days);
}

/**
 * Part of the water to swap each day for water of salinity `sourceS` (0: fresh) so that each day ends at its level.
 * Shares are by mass; taken as shares of the volume they are up to 3 % of themselves too small, on the gentle side,
 * because fresh water is lighter than salt water. Source: mass balance [mixing].
 * Check: S 39.77 to 34.51 in four steps of 0.001 SG in 55 US gal -> 1.8, 1.9, 1.95, 2.0 gal.
 *
 * @throws Problem when the source is not beyond the last level, or so near it that a day would swap more than half.
 */
export function swapDays(fromS: number, levelsS: readonly number[], sourceS: number): readonly SwapDay[] {
  let now = fromS;
  return levelsS.map((toS) => {
    const fraction = fractionForGoal({ now, goal: toS, fresh: sourceS });
    if (fraction === undefined || fraction > mostSwap) {
      throw new Problem('Water of that salinity cannot bring the tank there.', {
        field: 'fresh',
        given: `${sourceS} ppt`,
        hint: `The new water must be clearly ${toS > fromS ? 'saltier' : 'less salty'} than the goal.`,
      });
    }
    now = toS;
    return { toS, fraction };
  });
}
