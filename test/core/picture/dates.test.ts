import { describe, expect, it } from 'vitest';
import { dayText, rangeText, tickText, wallMs } from '../../../core/picture/dates.ts';
import { timeTicks } from '../../../core/picture/time-ticks.ts';
import { MS_PER_DAY } from '../../../core/trend/dated.ts';

const hour = MS_PER_DAY / 24;

describe('wallMs', () => {
  // IANA time zone database: New York leaves UTC-5 for UTC-4 on 8 March 2026 at 7:00 UTC; Kathmandu is at UTC+5:45.
  it.each([
    { zone: 'UTC', at: Date.UTC(2026, 2, 8, 7), hours: 0 },
    { zone: 'America/New_York', at: Date.UTC(2026, 2, 8, 6, 59), hours: -5 },
    { zone: 'America/New_York', at: Date.UTC(2026, 2, 8, 7), hours: -4 },
    { zone: 'Asia/Kathmandu', at: Date.UTC(2026, 2, 8, 7), hours: 5.75 },
  ])('$zone: $hours h', ({ zone, at, hours }) => expect((wallMs(at, zone) - at) / hour).toBe(hours));
});

describe('words for dates', () => {
  it('a day, a range', () => {
    const [third, ninth] = [Date.UTC(2026, 2, 3), Date.UTC(2026, 2, 9)];
    expect(dayText(third)).toBe('3 Mar');
    expect(rangeText(third, ninth)).toBe('3 Mar to 9 Mar 2026');
    expect(rangeText(third, third + hour)).toBe('3 Mar 2026');
    expect(rangeText(Date.UTC(2025, 11, 30), third)).toBe('30 Dec 2025 to 3 Mar 2026');
    expect(rangeText(Date.UTC(2025, 2, 3), third)).toBe('3 Mar 2025 to 3 Mar 2026');
  });

  it.each([
    { step: 1 / 24, at: Date.UTC(2026, 2, 3, 14), expected: '14:00' },
    { step: 1 / 4, at: Date.UTC(2026, 2, 3), expected: '3 Mar' },
    { step: 7, at: Date.UTC(2026, 2, 3), expected: '3 Mar' },
    { step: 31, at: Date.UTC(2026, 2, 1), expected: 'Mar 2026' },
    { step: 365, at: Date.UTC(2026, 0, 1), expected: '2026' },
  ])('a tick every $step days: $expected', ({ step, at, expected }) =>
    expect(tickText(at, step)).toBe(expected),
  );
});

/** Labels of 90 units where the whole width is 700. */
function labels(from: number, to: number): string[] {
  const ticks = timeTicks(from, to, (_, days) => (700 * days * MS_PER_DAY) / (to - from) > 90);
  return ticks.map(({ text }) => text);
}

describe('timeTicks', () => {
  const start = Date.UTC(2026, 0, 3, 12);

  it.each([
    { days: 1 / 24, expected: ['12:00', '13:00'] },
    {
      days: 0.9,
      expected: ['12:00', '15:00', '18:00', '21:00', '4 Jan', '03:00', '06:00', '09:00'],
    },
    { days: 10, expected: ['4 Jan', '6 Jan', '8 Jan', '10 Jan', '12 Jan'] },
    { days: 60, expected: ['4 Jan', '18 Jan', '1 Feb', '15 Feb', '1 Mar'] },
    { days: 200, expected: ['Feb 2026', 'Mar 2026', 'Apr 2026', 'May 2026', 'Jun 2026', 'Jul 2026'] },
    {
      days: 700,
      expected: ['Apr 2026', 'Jul 2026', 'Oct 2026', 'Jan 2027', 'Apr 2027', 'Jul 2027', 'Oct 2027'],
    },
    { days: 1500, expected: ['2027', '2028', '2029', '2030'] },
  ])('$days days', ({ days, expected }) =>
    expect(labels(start, start + days * MS_PER_DAY)).toEqual(expected),
  );

  it.each([1 / 24, 0.3, 3, 28, 45, 400, 4000])('%f days always has a mark, and all in range', (days) => {
    const ticks = timeTicks(start, start + days * MS_PER_DAY, () => false);
    expect(ticks.length).toBeGreaterThan(0);
    for (const { wall } of ticks) {
      expect(wall).toBeGreaterThanOrEqual(start);
      expect(wall).toBeLessThanOrEqual(start + days * MS_PER_DAY);
    }
  });
});
