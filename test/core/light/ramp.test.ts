import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { LONG_PLAN_WEEKS, rampPlan } from '../../../core/light/ramp.ts';
import { Problem } from '../../../core/problem.ts';

const source =
  'compound growth by hand, rounded down to whole numbers; 10 % a week is common practice, no source';

describe('rampPlan', () => {
  it.each([
    { now: 100, goal: 110, weeks: 1, source },
    { now: 100, goal: 121, weeks: 2, source },
    { now: 100, goal: 146.41, weeks: 5, source },
    { now: 100, goal: 150, weeks: 5, source },
    { now: 40, goal: 60, weeks: 5, source },
    { now: 100, goal: 101, weeks: 1, source },
  ])('$now to $goal at 10 % a week takes $weeks', ({ now, goal, weeks }) => {
    const plan = rampPlan(now, goal);
    expect(plan).toMatchObject({ direction: 'raise', weeks });
    expect(plan.steps).toHaveLength(weeks);
    expect(plan.steps.at(-1)?.value).toBe(goal);
  });

  // By hand: 100 x 1.1 = 110; x 1.1 = 121; x 1.1 = 133.1; 133 x 1.1 = 146.3; then what is left.
  it.each([
    [100, 150, 10, [110, 121, 133, 146, 150]],
    [10, 13, 10, [11, 12.1, 13]],
    [65, 75, 5, [68, 71, 74, 75]],
    [1, 1.03, 1, [1.01, 1.02, 1.03]],
  ])('%d to %d at %d %% by the most that can be set', (now, goal, pace, values) => {
    expect(rampPlan(now, goal, pace).steps.map((step) => step.value)).toEqual(values);
  });

  it('takes no week more for an exact power of the pace: 40 x 1.15^2 = 52.9', () => {
    expect(rampPlan(40, 52.9, 15).weeks).toBe(2);
  });

  it('lowers at once', () => {
    expect(rampPlan(250, 100)).toMatchObject({
      direction: 'lower',
      weeks: 0,
      steps: [{ week: 1, value: 100 }],
    });
  });

  it('stays where it is', () => {
    expect(rampPlan(100, 100)).toMatchObject({ direction: 'stay', weeks: 0, steps: [] });
  });

  it('says how long a very long plan is, and lists only its first half year', () => {
    const plan = rampPlan(10, 200);
    // 1.1^32 = 21.1, and rounding down takes no more than two weeks longer.
    expect(plan.weeks).toBeGreaterThanOrEqual(32);
    expect(plan.weeks).toBeLessThanOrEqual(34);
    expect(plan.steps).toHaveLength(LONG_PLAN_WEEKS);
    expect(plan.steps.at(-1)?.value).toBeLessThan(200);
  });

  it('rises every week, never by more than the pace, and ends at the goal', () => {
    const value = fc.double({ min: 1, max: 2000, noNaN: true });
    fc.assert(
      fc.property(value, value, fc.double({ min: 1, max: 20, noNaN: true }), (a, b, pace) => {
        const [now, goal] = [Math.min(a, b), Math.max(a, b)];
        fc.pre(goal > now * 1.0001);
        const plan = rampPlan(now, goal, pace);
        const values = [now, ...plan.steps.map((step) => step.value)];
        for (const [i, value_] of values.slice(1).entries()) {
          const before = values[i] ?? Number.NaN;
          expect(value_).toBeGreaterThan(before);
          expect(value_ / before - 1).toBeLessThanOrEqual(pace / 100 + 1e-8);
        }
        const last = plan.steps.at(-1)?.value ?? Number.NaN;
        expect(plan.weeks > LONG_PLAN_WEEKS ? last < goal : last === goal).toBe(true);
        for (const step of plan.steps.slice(0, -1)) {
          expect(Number(step.value.toFixed(3)), 'no more places than are printed').toBe(step.value);
        }
        // Rounding down leaves at least half of the pace, so no plan takes more than about twice the weeks.
        const fewest = Math.log(goal / now) / Math.log(1 + pace / 100);
        expect(plan.weeks).toBeLessThanOrEqual(2.2 * fewest + 2);
      }),
    );
  });

  it.each([
    [0, 100, 10],
    [100, 0, 10],
    [100, 5000, 10],
    [100, 150, 0],
    [100, 150, 50],
    [Number.NaN, 100, 10],
  ])('refuses %s to %s at %s %%', (now, goal, pace) => {
    expect(() => rampPlan(now, goal, pace)).toThrow(Problem);
  });
});
