import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Problem } from '../../../core/problem.ts';
import { changesToSettle, course, fractionToHold, settles } from '../../../core/change/routine.ts';

const source = 'mass balance: before = cs + p/f, after = cs + p(1 - f)/f';

const table = [
  { fresh: 0, rise: 5, fraction: 0.1, before: 50, after: 45, source },
  { fresh: 0, rise: 4, fraction: 0.15, before: 26.6667, after: 22.6667, source },
  { fresh: 2, rise: 4, fraction: 0.5, before: 10, after: 6, source },
];

describe('a routine with a steady rise', () => {
  it.each(table)('+$rise, share $fraction settles at $before and $after', (row) => {
    const found = settles(row);
    expect(found.before).toBeCloseTo(row.before, 4);
    expect(found.after).toBeCloseTo(row.after, 4);
  });

  it('the share that holds a peak: 4 a week at 10 -> 0.4 (p/(peak - cs), by hand)', () => {
    expect(fractionToHold(10, 0, 4)).toBeCloseTo(0.4, 12);
    expect(fractionToHold(12, 2, 4)).toBeCloseTo(0.4, 12);
    expect(fractionToHold(3, 0, 4)).toBeUndefined();
    expect(fractionToHold(2, 2, 4)).toBeUndefined();
  });

  it('week by week: 20, +4, 15 % (iterated by hand)', () => {
    const found = course(20, { fresh: 0, rise: 4, fraction: 0.15 }, 3);
    const expected = [20, 17, 21, 17.85, 21.85, 18.5725];
    found
      .flatMap(({ before, after }) => [before, after])
      .forEach((x, i) => expect(x).toBeCloseTo(expected[i] ?? NaN, 10));
    expect(found).toHaveLength(3);
  });

  it('settles is the fixed point of the iteration, reached from any start', () => {
    const rise = fc.double({ min: 0.01, max: 50, noNaN: true });
    const fresh = fc.double({ min: 0, max: 20, noNaN: true });
    const fraction = fc.double({ min: 0.05, max: 1, noNaN: true });
    fc.assert(
      fc.property(fc.double({ min: 0, max: 500, noNaN: true }), fresh, rise, fraction, (now, cs, p, f) => {
        const routine = { fresh: cs, rise: p, fraction: f };
        const fixed = settles(routine);
        const held = course(fixed.before, routine, 2).at(-1);
        expect(held?.before).toBeCloseTo(fixed.before, 8);
        expect(held?.after).toBeCloseTo(fixed.after, 8);
        expect(course(now, routine, 800).at(-1)?.before).toBeCloseTo(fixed.before, 6);
        expect(fractionToHold(fixed.before, cs, p)).toBeCloseTo(f, 8);
      }),
    );
  });

  it('95 % of the way: 15 % takes 19 changes (ln 0.05/ln 0.85 = 18.43), and 18 are not enough', () => {
    expect(changesToSettle(0.15)).toBe(19);
    expect(0.85 ** 19).toBeLessThan(0.05);
    expect(0.85 ** 18).toBeGreaterThan(0.05);
  });

  it('refuses a negative rise and no changes', () => {
    expect(() => settles({ fresh: 0, rise: -1, fraction: 0.1 })).toThrow(Problem);
    expect(() => course(1, { fresh: 0, rise: 1, fraction: 0.1 }, 0)).toThrow(Problem);
  });
});
