import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evenDays, swapDays } from '../../../core/change/day-plan.ts';
import { afterChanges } from '../../../core/change/exchange.ts';
import { Problem } from '../../../core/problem.ts';
import { salinityFromSpecificGravity } from '../../../core/water/specific-gravity.ts';

const s = (sg: number): number => salinityFromSpecificGravity(sg, '25/25');

/** The salinity after swapping day by day what the plan says. */
const swap = (start: number, fresh: number, goal: number): number =>
  swapDays(start, evenDays(start, goal, 1, 0.1), fresh).reduce(
    (now, { fraction }) => afterChanges({ now, fresh, fraction }),
    start,
  );

describe('day plan', () => {
  it('1.030 to 1.026 at 0.001 a day: 1.8, 1.9, 1.95, 2.0 of 55 US gal (EOS-80 25/25, 1 - S2/S1 by hand)', () => {
    const days = swapDays(s(1.03), evenDays(1.03, 1.026, 0.001, 0.0001).map(s), 0);
    const gallons = days.map(({ fraction }) => 55 * fraction);
    expect(gallons).toHaveLength(4);
    [1.82, 1.88, 1.95, 2.03].forEach((expected, day) => expect(gallons[day]).toBeCloseTo(expected, 2));
  });

  it('one swap 1.030 to 1.026 is 13.2 % (39.78 and 34.51 by EOS-80)', () => {
    const [day] = swapDays(s(1.03), [s(1.026)], 0);
    expect(day?.fraction).toBeCloseTo(0.1325, 3);
  });

  it.each([
    { from: 1.0302, to: 1.026, pace: 0.001, digit: 0.0001, levels: [1.0294, 1.0286, 1.0277, 1.0269, 1.026] },
    { from: 38, to: 35, pace: 1, digit: 0.1, levels: [37, 36, 35] },
    { from: 35, to: 36.25, pace: 0.5, digit: 0.1, levels: [35.35, 35.75, 36.25] },
  ])('$from to $to at $pace', ({ from, to, pace, digit, levels }) => {
    const days = evenDays(from, to, pace, digit);
    expect(days).toHaveLength(levels.length);
    days.forEach((level, day) => expect(level).toBeCloseTo(levels[day] ?? Number.NaN, 5));
  });

  it('has steps of whole digits within the pace that end at the goal', () => {
    const ppt = fc.double({ min: 28, max: 41, noNaN: true });
    fc.assert(
      fc.property(ppt, ppt, fc.double({ min: 0.3, max: 2, noNaN: true }), (from, to, pace) => {
        fc.pre(Math.abs(from - to) > 0.01);
        const days = evenDays(from, to, pace, 0.1);
        const steps = days.map((level, day) => Math.abs(level - (days[day - 1] ?? from)));
        expect(days.at(-1)).toBe(to);
        for (const step of steps) expect(step).toBeLessThanOrEqual(pace * (1 + 1e-5));
        expect((days.length - 1) * (Math.floor(pace * 10 + 1e-9) / 10)).toBeLessThan(
          Math.abs(from - to) + 1e-6,
        );
      }),
    );
  });

  it('swapping what it says, day by day, lowers and raises to the goal and back', () => {
    const ppt = fc.double({ min: 25, max: 36, noNaN: true });
    fc.assert(
      fc.property(ppt, fc.double({ min: 0.5, max: 5, noNaN: true }), (low, gap) => {
        const high = low + gap;
        const lowered = swap(high, 0, low);
        expect(lowered).toBeCloseTo(low, 8);
        expect(swap(low, high + 5, high)).toBeCloseTo(high, 8);
      }),
    );
  });

  it('refuses water that cannot do it, water too near the goal, and a plan without end', () => {
    expect(() => swapDays(39, [38], 38.5)).toThrow(Problem);
    expect(() => swapDays(39, [38], 37.5)).toThrow(Problem);
    expect(() => swapDays(33, [34], 34)).toThrow(Problem);
    expect(() => evenDays(20, 35, 0.1, 0.1)).toThrow(/150 days/);
  });
});
