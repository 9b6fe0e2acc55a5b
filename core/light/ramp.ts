import { inRange } from '../problem.ts';
import { MAX_PPFD } from './band.ts';

/** Usual raise of light in a week, per cent of what it was: common practice, no source. */
export const USUAL_RAISE_PERCENT = 10;
/** The fastest raise this plans, per cent a week: this project's own limit. */
export const MAX_RAISE_PERCENT = 20;
/** A usual full ramp for a new coral, weeks: common practice, no source. */
export const usualRampWeeks = { low: 3, high: 4 } as const;
/** A plan longer than this (half a year) is cut here and said to be long: this project's own choice. */
export const LONG_PLAN_WEEKS = 26;

/** What to set at the start of a week, in the unit of the plan (umol m-2 s-1 or per cent of a lamp's power). */
export interface RampStep {
  readonly week: number;
  readonly value: number;
}

export interface RampPlan {
  readonly direction: 'raise' | 'lower' | 'stay';
  /** Weeks of rising until the goal is set; 0 when lowering (at once) or staying. */
  readonly weeks: number;
  /** Week 1 is today. At most `LONG_PLAN_WEEKS` steps, so the last need not be the goal. */
  readonly steps: readonly RampStep[];
}

/**
 * A plan from the present light to the goal: every week the most that is within `pacePercent` of the week before,
 * rounded down to what can be read and set, so that no printed step is above the pace; the last step is what is left.
 * Lowering needs no plan: one step, at once. Print the values with `fixed(value, 3)`: none has more places.
 *
 * `now` and `goal` share a unit and are both from 1 to `MAX_PPFD`. Check: 100 to 150 at 10 % -> 110, 121, 133, 146, 150;
 * 100 to 121 -> 110, 121; 40 to 52.9 at 15 % -> 46, 52.9. Pace: common practice, no source.
 *
 * @throws Problem for a value outside that range or a pace outside 1 to `MAX_RAISE_PERCENT` %.
 */
export function rampPlan(now: number, goal: number, pacePercent: number = USUAL_RAISE_PERCENT): RampPlan {
  inRange('now', now, 1, MAX_PPFD, 'PAR or %');
  inRange('goal', goal, 1, MAX_PPFD, 'PAR or %');
  inRange('pace', pacePercent, 1, MAX_RAISE_PERCENT, '% a week');
  if (goal === now) return { direction: 'stay', weeks: 0, steps: [] };
  if (goal < now) return { direction: 'lower', weeks: 0, steps: [{ week: 1, value: goal }] };
  const steps: RampStep[] = [];
  for (let value = now; value < goal;) {
    value = raised(value, pacePercent / 100, goal);
    steps.push({ week: steps.length + 1, value });
  }
  return { direction: 'raise', weeks: steps.length, steps: steps.slice(0, LONG_PLAN_WEEKS) };
}

/** Steps of light and settings that are read and set: whole numbers, tenths, and below that only where the pace asks. */
const PLACES = [0, 1, 2, 3] as const;

/** The most after a week, but the goal: rounded down to a place that the pace has two steps of; whole from 20 up. */
function raised(value: number, pace: number, goal: number): number {
  const mostValue = value * (1 + pace);
  // The small number keeps an exact step (46 x 1.15 = 52.9) from becoming one week more by the computer's rounding.
  if (goal <= mostValue + 1e-9) return goal;
  const places = PLACES.find((one) => 10 ** -one * 2 <= value * pace && (one > 0 || value >= 20)) ?? 3;
  return Math.floor(mostValue * 10 ** places + 1e-6) / 10 ** places;
}
