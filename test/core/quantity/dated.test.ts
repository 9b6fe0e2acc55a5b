import { describe, expect, it } from 'vitest';
import { Problem } from '../../../core/problem.ts';
import { daysBetween, splitDate } from '../../../core/quantity/dated.ts';

describe('splitDate', () => {
  // Days since 1970-01-01 of the Gregorian calendar: 2026-01-03 is day 20456 (from memory, checked with Date.UTC).
  const table: [string, string, number | undefined][] = [
    ['9.3 on 2026-01-03', '9.3', 20456.5],
    ['9.3 dKH @ 2026-01-03 18:00', '9.3 dkh', 20456.75],
    ['9.3 on 3 Jan 2026', '9.3', 20456.5],
    ['9.3 on Jan 3, 2026', '9.3', 20456.5],
    ['9.3 on 3rd Jan 2026 at 6pm', '9.3', 20456.75],
    ['9.3', '9.3', undefined],
    ['9.3 on marble 3', '9.3 on marble 3', undefined],
    ['9.3 at noon', '9.3 at noon', undefined],
  ];
  it.each(table)('%s', (given, text, day) => {
    expect(splitDate(given, 'x', 2026)).toMatchObject({ text, day });
  });

  it.each(['9 on 2026-02-30', '9 on 2026-13-01', '9 on 31 Apr', '9 on 2026-01-01 25:00', '9 on 3 Jan 13pm'])(
    '%s is no date',
    (text) => {
      expect(() => splitDate(text, 'x', 2026)).toThrow(Problem);
    },
  );
});

describe('daysBetween', () => {
  const table: [string, string, number | undefined][] = [
    ['9 on 2026-01-03', '8 on 2026-01-05', 2],
    ['9 on 2026-01-03 18:00', '8 on 2026-01-05 06:00', 1.5],
    ['9 on 30 Dec', '8 on 2 Jan', 3],
    ['9 on 28 Feb 2026', '8 on 1 Mar 2026', 1],
    ['9 on 5 Jan 2026', '8 on 3 Jan 2026', -2],
    ['9 on 28 Feb', '8 on 1 Mar', 1],
    ['9', '8 on 3 Jan', undefined],
  ];
  it.each(table)('%s to %s', (before, now, days) => {
    expect(daysBetween(splitDate(before, 'x', 2026), splitDate(now, 'x', 2026))).toBe(days);
  });
});
