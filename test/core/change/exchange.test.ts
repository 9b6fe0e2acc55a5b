import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { afterChanges, changesToGoal, fractionForGoal } from '../../../core/change/exchange.ts';
import { Problem } from '../../../core/problem.ts';

const source = 'mass balance of a well-mixed tank: cs + (c0 - cs)(1 - f)^n, worked by hand';

const after = [
  { now: 40, fresh: 0, fraction: 0.2, changes: 1, expected: 32, tolerance: 1e-12, source },
  { now: 40, fresh: 0, fraction: 0.2, changes: 3, expected: 20.48, tolerance: 1e-12, source },
  { now: 40, fresh: 5, fraction: 0.2, changes: 3, expected: 22.92, tolerance: 1e-12, source },
  { now: 14, fresh: 8, fraction: 1 / 3, changes: 1, expected: 12, tolerance: 1e-12, source },
  { now: 14, fresh: 8, fraction: 0.25, changes: 1, expected: 12.5, tolerance: 1e-12, source },
  { now: 14, fresh: 8, fraction: 0.25, changes: 2, expected: 11.375, tolerance: 1e-12, source },
  { now: 14, fresh: 8, fraction: 0.25, changes: 3, expected: 10.53125, tolerance: 1e-12, source },
  { now: 100, fresh: 0, fraction: 0.1, changes: 3, expected: 72.9, tolerance: 1e-12, source },
  { now: 40, fresh: 3, fraction: 1, changes: 1, expected: 3, tolerance: 0, source },
];

const needed = [
  { now: 40, goal: 10, fresh: 0, expected: 0.75, tolerance: 1e-12, source },
  { now: 80, goal: 10, fresh: 0, expected: 0.875, tolerance: 1e-12, source },
  { now: 14, goal: 9, fresh: 8, expected: 5 / 6, tolerance: 1e-12, source },
  { now: 7, goal: 8, fresh: 11, expected: 0.25, tolerance: 1e-12, source: `${source}; upward` },
  { now: 35, goal: 33, fresh: 0, expected: 0.05714, tolerance: 5e-6, source: '1 - S2/S1 by mass' },
];

const counts = [
  { now: 40, goal: 10, fresh: 0, fraction: 0.2, rise: 0, exact: 6.21257, whole: 7, source },
  { now: 80, goal: 10, fresh: 0, fraction: 0.2, rise: 0, exact: 9.3189, whole: 10, source: 'ln(1/8)/ln 0.8' },
  { now: 80, goal: 10, fresh: 0, fraction: 0.5, rise: 0, exact: 3, whole: 3, source: 'three halvings' },
  { now: 7, goal: 10, fresh: 11, fraction: 0.5, rise: 0, exact: 2, whole: 2, source: 'gap 4, 2, 1' },
  { now: 40, goal: 40, fresh: 0, fraction: 0.5, rise: 0, exact: 0, whole: 0, source: 'nothing to do' },
  // 40 -> 20 | 24 -> 12 | 16 -> 8: three halvings with 4 made between them.
  {
    now: 40,
    goal: 9,
    fresh: 0,
    fraction: 0.5,
    rise: 4,
    exact: 2.6781,
    whole: 3,
    source: 'iterated by hand; ln(5/32)/ln 0.5',
  },
];

describe('batch water changes', () => {
  it.each(after)('$now with new water $fresh, $changes of $fraction -> $expected', (row) => {
    expect(Math.abs(afterChanges(row, row.changes) - row.expected)).toBeLessThanOrEqual(row.tolerance);
  });

  it.each(needed)('one change $now to $goal needs $expected', (row) => {
    expect(Math.abs((fractionForGoal(row) ?? Number.NaN) - row.expected)).toBeLessThanOrEqual(row.tolerance);
  });

  it.each(counts)('$now to $goal by $fraction with rise $rise takes $whole changes', (row) => {
    const found = changesToGoal(row, row.fraction, row.rise);
    expect(found?.whole).toBe(row.whole);
    expect(found?.exact).toBeCloseTo(row.exact, 4);
  });

  it('says undefined for what no change reaches', () => {
    expect(fractionForGoal({ now: 40, goal: 4, fresh: 5 })).toBeUndefined();
    expect(fractionForGoal({ now: 40, goal: 50, fresh: 5 })).toBeUndefined();
    expect(changesToGoal({ now: 40, goal: 5, fresh: 5 }, 0.2)).toBeUndefined();
    expect(changesToGoal({ now: 40, goal: 16, fresh: 0 }, 0.2, 4)).toBeUndefined();
    expect(changesToGoal({ now: 40, goal: 16.1, fresh: 0 }, 0.2, 4)).toBeDefined();
  });

  it.each([0, -0.1, 1.01, Number.NaN, Infinity])('refuses a share of %s', (fraction) => {
    expect(() => afterChanges({ now: 1, fresh: 0, fraction })).toThrow(Problem);
    expect(() => changesToGoal({ now: 2, goal: 1, fresh: 0 }, fraction)).toThrow(Problem);
  });

  it.each([-1, Number.NaN, Infinity])('refuses a level of %s', (level) => {
    expect(() => afterChanges({ now: level, fresh: 0, fraction: 0.5 })).toThrow(Problem);
    expect(() => fractionForGoal({ now: 2, goal: level, fresh: 0 })).toThrow(Problem);
  });
});

const level = fc.double({ min: 0.01, max: 500, noNaN: true });
const share = fc.double({ min: 0.02, max: 0.95, noNaN: true });

describe('properties of batch changes', () => {
  it('the whole number reaches the goal and one less does not, with and without a rise', () => {
    fc.assert(
      fc.property(
        level,
        level,
        share,
        fc.double({ min: 0, max: 20, noNaN: true }),
        (now, goal, fraction, rise) => {
          fc.pre(goal < now * 0.999);
          const found = changesToGoal({ now, goal, fresh: 0 }, fraction, rise);
          fc.pre(found !== undefined && found.whole < 500);
          let before = now;
          const levels: number[] = [];
          for (let n = 0; n < (found?.whole ?? 0); n += 1) {
            levels.push(before * (1 - fraction));
            before = before * (1 - fraction) + rise;
          }
          const slack = 1e-6 * goal;
          expect(levels.at(-1)).toBeLessThanOrEqual(goal + slack);
          for (const earlier of levels.slice(0, -1)) expect(earlier).toBeGreaterThan(goal - slack);
        },
      ),
    );
  });

  it('what is said never to be reached is not reached in 2000 changes', () => {
    fc.assert(
      fc.property(
        level,
        level,
        share,
        fc.double({ min: 0.1, max: 50, noNaN: true }),
        (now, goal, fraction, rise) => {
          fc.pre(goal < now && changesToGoal({ now, goal, fresh: 0 }, fraction, rise) === undefined);
          let before = now;
          let least = now;
          for (let n = 0; n < 2000; n += 1) {
            least = Math.min(least, before * (1 - fraction));
            before = before * (1 - fraction) + rise;
          }
          expect(least).toBeGreaterThan(goal * (1 - 1e-9));
        },
      ),
      { numRuns: 50 },
    );
  });

  it('the share for a goal, changed once, gives the goal', () => {
    fc.assert(
      fc.property(level, level, fc.double({ min: 0.01, max: 1, noNaN: true }), (now, fresh, fraction) => {
        fc.pre(Math.abs(now - fresh) > 1e-3);
        const goal = afterChanges({ now, fresh, fraction });
        expect(fractionForGoal({ now, goal, fresh })).toBeCloseTo(fraction, 6);
      }),
    );
  });
});
