import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { splitByPace } from '../../../core/dosing/pace.ts';
import { Problem } from '../../../core/problem.ts';

describe('splitByPace', () => {
  it.each([
    { rise: 1.2, most: 1, days: 2, each: 0.6 },
    { rise: 2.7, most: 1, days: 3, each: 0.9 },
    { rise: 200, most: 100, days: 2, each: 100 },
    { rise: 70, most: 50, days: 2, each: 35 },
    { rise: 8.4 - 7.4, most: 1, days: 1, each: 1 },
    { rise: 0.3, most: 0.1, days: 3, each: 0.1 },
    { rise: 0, most: 1, days: 0, each: 0 },
  ])('$rise at $most a day is $days days of $each', ({ rise, most, days, each }) => {
    const split = splitByPace(rise, most);
    expect(split.days).toBe(days);
    expect(split.risePerDay).toBeCloseTo(each, 9);
  });

  it('adds up, keeps to the pace and wastes no day', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-3, max: 300, noNaN: true }),
        fc.double({ min: 1, max: 100, noNaN: true }),
        (rise, most) => {
          const { days, risePerDay } = splitByPace(rise, most);
          expect(days * risePerDay).toBeCloseTo(rise, 9);
          expect(risePerDay).toBeLessThanOrEqual(most * (1 + 1e-8));
          expect((days - 1) * most).toBeLessThan(rise);
        },
      ),
    );
  });

  it.each([
    [1, 0],
    [1, -1],
    [-1, 1],
    [Number.NaN, 1],
    [366, 1],
  ])('refuses %d at %d a day', (rise, most) => {
    expect(() => splitByPace(rise, most)).toThrow(Problem);
  });
});
