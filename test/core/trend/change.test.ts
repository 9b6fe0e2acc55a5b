import { describe, expect, it } from 'vitest';
import { suddenUse } from '../../../core/trend/change.ts';
import { useBetween } from '../../../core/trend/daily-use.ts';
import { MS_PER_DAY } from '../../../core/trend/dated.ts';

/** Uses a day in a row, each over two days. */
function usesOf(...perDay: readonly number[]) {
  const readings = [{ atMs: 0, value: 100 }];
  for (const [i, use] of perDay.entries()) {
    readings.push({ atMs: 2 * (i + 1) * MS_PER_DAY, value: (readings.at(-1)?.value ?? 0) - 2 * use });
  }
  return useBetween(readings, [], 0.3);
}

describe('suddenUse', () => {
  // Earlier uses 0.5, 0.6, 0.6, 0.7, 0.8: median 0.6, deviation 0.1, so 3 * 1.4826 * 0.1 = 0.445 is allowed.
  const usual = [0.5, 0.6, 0.8, 0.6, 0.7];

  it.each([
    { last: 1.0, expected: undefined },
    { last: 1.04, expected: undefined },
    { last: 1.05, expected: 'up' },
    { last: 0.16, expected: undefined },
    { last: 0.15, expected: 'down' },
  ])('last use $last: $expected', ({ last, expected }) => {
    expect(suddenUse(usesOf(...usual, last), 0.3)?.direction).toBe(expected);
  });

  it('says what is usual', () => {
    const change = suddenUse(usesOf(...usual, 2), 0.3);
    expect(change?.usualPerDay).toBeCloseTo(0.6, 8);
    expect(change?.perDay).toBeCloseTo(2, 8);
    expect(change?.earlier).toBe(5);
  });

  it('is quiet with fewer than five earlier uses', () => {
    expect(suddenUse(usesOf(0.6, 0.6, 0.6, 0.6, 3), 0.3)).toBeUndefined();
    expect(suddenUse([], 0.3)).toBeUndefined();
  });

  it('never takes the kit for a change: 0.3 over two days is 0.15 a day', () => {
    expect(suddenUse(usesOf(0.6, 0.6, 0.6, 0.6, 0.6, 0.75), 0.3)).toBeUndefined();
    expect(suddenUse(usesOf(0.6, 0.6, 0.6, 0.6, 0.6, 0.76), 0.3)?.direction).toBe('up');
  });
});
