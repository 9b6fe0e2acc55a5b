import { describe, expect, it } from 'vitest';
import { daysUntilDay } from '../../../core/language/days-until.ts';

// Counted on a calendar: 30 November 2026 is a Monday.
describe('days from today to a day to come', () => {
  const today = { year: 2026, month: 11, dayOfMonth: 30 };

  it.each([
    ['tomorrow', 1],
    ['sunday', 6],
    ['monday', 7],
    ['the 14th', 14],
    ['24 dec', 24],
    ['3 jan', 34],
  ])('%s', (text, days) => expect(daysUntilDay(text, today)).toBe(days));

  it.each(['today', '31st', 'last week', '9 am'])('none to "%s"', (text) =>
    expect(daysUntilDay(text, text === '31st' ? { ...today, dayOfMonth: 5 } : today)).toBeUndefined(),
  );
});
