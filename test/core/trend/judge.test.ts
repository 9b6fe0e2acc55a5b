import { describe, expect, it } from 'vitest';
import { leastSquares } from '../../../core/trend/fit.ts';
import { daysToEdge, judgeTrend } from '../../../core/trend/judge.ts';
import { theilSen } from '../../../core/trend/robust.ts';
import { daily } from './lines.ts';

/** Alkalinity, one reading a day, 0.3 dKH kit. */
function judged(values: readonly number[], fit: typeof theilSen = theilSen) {
  const line = fit(daily(values));
  if (line === undefined) throw new Error('no line');
  return judgeTrend(line, values.length - 1, 0.3);
}

describe('judgeTrend', () => {
  it('two readings: the kit’s error alone', () => {
    expect(judged([8, 8.3])).toMatchObject({ verdict: 'within error', kitOnly: true });
    expect(judged([8, 8.4])).toMatchObject({ verdict: 'rising', kitOnly: true });
    expect(judged([8.4, 8]).verdict).toBe('falling');
    expect(judged([8.4, 8]).range.low).toBeCloseTo(-0.7, 10);
  });

  it('readings of one step claim no more than the kit can tell', () => {
    const { verdict, range } = judged([8, 8, 8, 8, 8, 8, 8]);
    expect(verdict).toBe('within error');
    expect(range.low).toBeCloseTo(-0.05, 10);
    expect(range.high).toBeCloseTo(0.05, 10);
  });

  it('a clear fall', () => {
    for (const fit of [theilSen, leastSquares]) {
      const trend = judged([9, 8.8, 8.7, 8.4, 8.3, 8.1, 7.9, 7.8], fit);
      expect(trend.verdict).toBe('falling');
      expect(trend.range.low).toBeLessThan(trend.perDay);
      expect(trend.range.high).toBeLessThan(0);
    }
  });

  it('scatter without a trend', () =>
    expect(judged([8, 9, 7.5, 8.6, 8.1, 9, 7.9]).verdict).toBe('within error'));
});

describe('daysToEdge', () => {
  const target = { low: 7, high: 9 };
  it.each([
    { value: 8, perDay: -0.1, expected: 10 },
    { value: 8, perDay: 0.25, expected: 4 },
    { value: 8, perDay: 0, expected: undefined },
    { value: 6.9, perDay: 0.1, expected: undefined },
    { value: 9.1, perDay: 0.1, expected: undefined },
  ])('$value moving $perDay a day: $expected', ({ value, perDay, expected }) => {
    const days = daysToEdge(value, perDay, target);
    if (expected === undefined) expect(days).toBeUndefined();
    else expect(days).toBeCloseTo(expected, 10);
  });
});
