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
  /** What the light rises by each week, per cent of the week before: never above the pace. */
  readonly stepPercent: number;
  /** Week 1 is today. At most `LONG_PLAN_WEEKS` steps, so the last need not be the goal. */
  readonly steps: readonly RampStep[];
}

/**
 * A plan from the present light to the goal in equal relative steps, none above `pacePercent` a week of the week
 * before. Weeks = ceil(ln(goal / now) / ln(1 + pace)). Lowering needs no plan: one step, at once.
 *
 * `now` and `goal` share a unit and are both from 1 to `MAX_PPFD`. Check: 100 to 150 at 10 % -> 5 weeks of 8.45 %
 * (1.1^4 = 1.464, 1.1^5 = 1.611); 100 to 121 -> 2 weeks. Pace: common practice, no source.
 *
 * @throws Problem for a value outside that range or a pace outside 1 to `MAX_RAISE_PERCENT` %.
 */
export function rampPlan(now: number, goal: number, pacePercent: number = USUAL_RAISE_PERCENT): RampPlan {
  inRange('now', now, 1, MAX_PPFD, 'PAR or %');
  inRange('goal', goal, 1, MAX_PPFD, 'PAR or %');
  inRange('pace', pacePercent, 1, MAX_RAISE_PERCENT, '% a week');
  if (goal === now) return { direction: 'stay', weeks: 0, stepPercent: 0, steps: [] };
  if (goal < now) {
    return { direction: 'lower', weeks: 0, stepPercent: 0, steps: [{ week: 1, value: goal }] };
  }
  // The small number keeps an exact power (40 -> 52.9 at 15 %) from becoming one week more by rounding.
  const weeks = Math.max(1, Math.ceil(Math.log(goal / now) / Math.log(1 + pacePercent / 100) - 1e-9));
  const ratio = (goal / now) ** (1 / weeks);
  const steps = Array.from({ length: Math.min(weeks, LONG_PLAN_WEEKS) }, (_, index) => ({
    week: index + 1,
    value: index + 1 === weeks ? goal : now * ratio ** (index + 1),
  }));
  return { direction: 'raise', weeks, stepPercent: (ratio - 1) * 100, steps };
}
