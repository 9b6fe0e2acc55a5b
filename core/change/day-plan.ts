import { inRange, Problem } from '../problem.ts';
import { fixed } from '../quantity/format.ts';
import { decimalsOf, roundedDown } from '../quantity/portion.ts';
import { say } from '../wording/say.ts';
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
 * Levels at the end of each day, from `from` (left out) to `to`, on any scale that is printed to `digit`: every step a
 * whole number of digits, none above `mostADay`, all within a digit of each other.
 * Check: 1.030 to 1.026 at 0.001 by 0.0001 -> 1.029, 1.028, 1.027, 1.026; 1.0302 -> 1.0294, 1.0286, 1.0277, 1.0269,
 * 1.026.
 *
 * @throws Problem when that takes more than 60 days, or the pace is less than a digit.
 */
export function evenDays(from: number, to: number, mostADay: number, digit: number): readonly number[] {
  const pace = inRange('pace', mostADay, digit, 10, 'a day');
  const digitsADay = Math.round(roundedDown(pace, digit) / digit);
  const digits = Math.max(1, Math.ceil(Math.abs(to - from) / digit - 1e-6));
  const days = Math.ceil(digits / digitsADay);
  if (days > mostDays) {
    throw new Problem(say('change.paceTakes', { days }), {
      field: 'pace',
      limit: say('change.atMostDays', { days: mostDays }),
    });
  }
  // A hair towards where the goal is rounded to, so that all levels are rounded the same way.
  const anchor = to + (Number(to.toFixed(decimalsOf(digit))) - to) * 1e-6;
  // No step is more than a digit from the others, so none is above the pace.
  const left = (day: number): number => digits - Math.floor((digits * (day + 1)) / days);
  return Array.from({ length: days }, (_, day) =>
    left(day) === 0 ? to : anchor + Math.sign(from - to) * left(day) * digit,
  );
}

/**
 * Part of the water to swap each day for water of salinity `sourceS` (0: fresh) so that each day ends at its level.
 * Shares are by mass; taken as shares of the volume they are up to 3 % of themselves too small, on the gentle side,
 * because fresh water is lighter than salt water. Source: mass balance [mixing].
 * `poured` rounds a part down to what is measured out, so that no day goes further than its level.
 * Check: S 39.77 to 34.51 in four steps of 0.001 SG in 55 US gal -> 1.8, 1.9, 1.95, 2.0 gal.
 *
 * @throws Problem when the source is not beyond the last level, or so near it that a day would swap more than half.
 */
export function swapDays(
  fromS: number,
  levelsS: readonly number[],
  sourceS: number,
  poured: (fraction: number) => number = (fraction) => fraction,
): readonly SwapDay[] {
  let now = fromS;
  const steps = levelsS.map((toS, day) => Math.abs(toS - (levelsS[day - 1] ?? fromS)));
  return levelsS.map((toS, day) => {
    // The last day makes up for what rounding left behind, but goes no further than the day before it.
    const most = Math.max(steps[day] ?? 0, day === levelsS.length - 1 ? (steps[day - 1] ?? 0) : 0);
    const goal = now + Math.sign(toS - now) * Math.min(Math.abs(toS - now), most);
    const fraction = fractionForGoal({ now, goal, fresh: sourceS });
    if (fraction === undefined || fraction > mostSwap) {
      throw new Problem(say('change.notThere'), {
        field: 'fresh',
        given: `${fixed(sourceS, 1)} ppt`,
        hint: say('change.hintNewWater', { wanted: toS > fromS ? 'saltier' : 'fresher' }),
      });
    }
    const part = poured(fraction);
    now += (sourceS - now) * part;
    return { toS, fraction: part };
  });
}
