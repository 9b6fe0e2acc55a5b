import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Problem } from '../../../core/problem.ts';
import {
  decimalsOf,
  drawingStep,
  drawn,
  portions,
  portionWords,
  roundedDown,
  threeFigures,
  weighable,
  weighed,
  weighingStep,
} from '../../../core/quantity/portion.ts';

const show = (amount: number): string => `${amount} g`;
const by = (step: number) => () => step;

describe('portions', () => {
  it.each([
    { total: 6.44, most: 5.37, step: 0.1, days: 2, each: 3.2, last: 3.2, all: 6.4 },
    { total: 10, most: 3.4, step: 0.1, days: 3, each: 3.4, last: 3.2, all: 10 },
    { total: 633.2, most: 316.6, step: 1, days: 2, each: 316, last: 316, all: 632 },
    { total: 0.3, most: 0.1, step: 0.1, days: 3, each: 0.1, last: 0.1, all: 0.3 },
    { total: 8.4 - 7.4, most: 1, step: 0.1, days: 1, each: 1, last: 1, all: 1 },
  ])('$total at $most a day by $step', ({ total, most, step, days, each, last, all }) => {
    expect(portions(total, most, by(step))).toEqual({ days, each, last, total: all, step });
  });

  it('adds up, keeps to the pace, is short by rounding alone and wastes no day', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-4, max: 5000, noNaN: true }),
        fc.double({ min: 1, max: 90, noNaN: true }),
        (total, share) => {
          const most = total / share;
          const plan = portions(total, most, weighingStep);
          if (plan === undefined) {
            expect(Math.min(total, most)).toBeLessThan(0.000001);
            return;
          }
          const { days, each, last, step } = plan;
          expect((days - 1) * each + last).toBeCloseTo(plan.total, 8);
          expect(each).toBeLessThanOrEqual(most * (1 + 1e-9));
          expect(last).toBeGreaterThan(0);
          expect(last).toBeLessThanOrEqual(each);
          expect(plan.total).toBeLessThanOrEqual(total * (1 + 1e-9));
          expect(plan.total).toBeGreaterThan(total * 0.995 - step * (days + 1));
          expect((days - 1) * most).toBeLessThan(total * (1 + 1e-8));
        },
      ),
      { numRuns: 5000 },
    );
  });

  it('refuses no pace, and a year without end; nothing measurable is no plan', () => {
    expect(() => portions(1, 0, by(0.1))).toThrow(Problem);
    expect(() => portions(1, -1, by(0.1))).toThrow(Problem);
    expect(() => portions(366, 1, by(0.1))).toThrow(/365 days/);
    expect(portions(0.04, 1, by(0.1))).toBeUndefined();
  });
});

describe('words', () => {
  it.each([
    [1, 3, 3, '3 g in one day'],
    [3, 3, 3, '3 g a day for 3 days'],
    [2, 3, 2, '3 g on day 1 and 2 g on day 2'],
    [4, 3, 2, '3 g a day for 3 days, then 2 g on day 4'],
  ])('%d days', (days, each, last, words) => {
    expect(portionWords({ days, each, last, total: 0, step: 1 }, show)).toBe(words);
  });

  it.each([
    [1234.9, '1.234 kg'],
    [633.9, '633 g'],
    [4.999, '4.99 g'],
    [6.499, '6.4 g'],
    [16.49, '16.4 g'],
    [2.999, '2.99 g'],
    [0.109, '0.1 g'],
    [0.008669, '8.66 mg'],
    [0.0008669, '0.866 mg'],
  ])('%d g is weighed as %s', (massG, text) => {
    expect(weighable(massG)).toBe(text);
  });

  it('never rounds up what is weighed or drawn', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.001, max: 5000, noNaN: true }), (amount) => {
        for (const step of [weighingStep(amount), drawingStep(amount), threeFigures(amount)]) {
          const down = roundedDown(amount, step);
          expect(down).toBeLessThanOrEqual(amount * (1 + 1e-9));
          expect(amount - down).toBeLessThan(step * (1 + 1e-9));
          expect(Number(down.toFixed(decimalsOf(step)))).toBe(down);
        }
      }),
    );
    expect(drawn(8.6, 0.1)).toBe('8.6 mL');
    expect(drawn(1250, 10)).toBe('1.25 L');
    expect(weighed(86.3, 0.01)).toBe('86.3 g');
  });
});
