import { describe, expect, it } from 'vitest';
import { dailyUse } from '../../../core/dosing/use.ts';
import { Problem } from '../../../core/problem.ts';

const kit = { resolution: 0.3 };

const width = (days: number) => {
  const { low, high } = dailyUse({ before: 9, now: 8, days, added: 0, ...kit });
  return high - low;
};

describe('dailyUse', () => {
  it('9.3 to 7.5 dKH in two days is 0.9 a day, 0.75 to 1.05 with a 0.3 dKH kit', () => {
    const use = dailyUse({ before: 9.3, now: 7.5, days: 2, added: 0, ...kit });
    expect(use.perDay).toBeCloseTo(0.9, 9);
    expect(use.low).toBeCloseTo(0.75, 9);
    expect(use.high).toBeCloseTo(1.05, 9);
    expect(use.withinError).toBe(false);
  });

  it('counts what was added, so dosing need not stop', () => {
    expect(dailyUse({ before: 8, now: 8, days: 4, added: 2.4, ...kit }).perDay).toBeCloseTo(0.6, 9);
  });

  it('a change no larger than the kit can tell is within error, either way', () => {
    expect(dailyUse({ before: 8.3, now: 8, days: 1, added: 0, ...kit }).withinError).toBe(true);
    expect(dailyUse({ before: 8, now: 8.2, days: 1, added: 0, ...kit }).withinError).toBe(true);
    expect(dailyUse({ before: 8.4, now: 8, days: 1, added: 0, ...kit }).withinError).toBe(false);
  });

  it('is negative when the value rose by more than was added', () => {
    expect(dailyUse({ before: 8, now: 9, days: 2, added: 0.2, ...kit }).perDay).toBeCloseTo(-0.4, 9);
  });

  it('a longer time narrows the range', () => {
    expect(width(10)).toBeCloseTo(width(2) / 5, 9);
  });

  it.each([0, -1, Number.NaN, 401])('refuses %d days', (days) => {
    expect(() => dailyUse({ before: 9, now: 8, days, added: 0, ...kit })).toThrow(Problem);
  });
});
