import { describe, expect, it } from 'vitest';
import { perFor, trendWords } from '../../../core/trend/words.ts';

describe('trendWords', () => {
  it.each([
    {
      perDay: -0.03,
      low: -0.043,
      high: -0.021,
      verdict: 'falling',
      unit: 'dKH',
      expected: 'falling 0.21 dKH a week (0.15 to 0.30)',
    },
    {
      perDay: 0.2,
      low: 0.03,
      high: 0.37,
      verdict: 'rising',
      unit: 'mg/L',
      expected: 'rising 1.4 mg/L a week (0.2 to 2.6)',
    },
    {
      perDay: 1,
      low: 0.02,
      high: 2,
      verdict: 'rising',
      unit: 'mg/L',
      expected: 'rising 7.00 mg/L a week (0.14 to 14.00)',
    },
    {
      perDay: 0,
      low: -0.016,
      high: 0.007,
      verdict: 'within error',
      unit: 'dKH',
      expected: 'within error, −0.11 to +0.05 dKH a week',
    },
    {
      perDay: 0,
      low: -0.0001,
      high: 0.2,
      verdict: 'within error',
      unit: '',
      expected: 'within error, 0 to +1.4 a week',
    },
  ] as const)('$expected', ({ perDay, low, high, verdict, unit, expected }) => {
    expect(trendWords({ perDay, range: { low, high }, verdict, kitOnly: false }, perFor(60), unit)).toBe(
      expected,
    );
  });
});

describe('perFor', () => {
  it.each([
    { days: 1, expected: 'a day' },
    { days: 13.9, expected: 'a day' },
    { days: 14, expected: 'a week' },
    { days: 400, expected: 'a week' },
  ])('$days days: $expected', ({ days, expected }) => expect(perFor(days).word).toBe(expected));
});
