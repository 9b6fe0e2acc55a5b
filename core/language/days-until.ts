import { readDay, type CalendarDay } from '../quantity/dated.ts';
import { MS_PER_DAY } from '../trend/dated.ts';
import { dayOfMonthSaid, weekdaySaid } from './day-said.ts';

/** A day of the calendar where the asker is. */
export type Today = CalendarDay & { readonly year: number };

/**
 * Whole days from today to a day that is said as one to come: a weekday within the next seven, a day of this month or the
 * next, a date of this year or the next. Undefined where it is none of these, or today.
 *
 * Check: on Monday 30 November 2026: the 14th -> 14; sunday -> 6; monday -> 7; 24 dec -> 24; 3 jan -> 34.
 */
export function daysUntilDay(text: string, { year, month, dayOfMonth }: Today): number | undefined {
  const now = Date.UTC(year, month - 1, dayOfMonth);
  if (text === 'tomorrow') return 1;
  const weekday = weekdaySaid(text);
  if (weekday !== undefined) return ((weekday - new Date(now).getUTCDay() + 6) % 7) + 1;
  const day = dayOfMonthSaid(text);
  if (day !== undefined) return ahead(now, day > dayOfMonth ? [year, month - 1, day] : [year, month, day]);
  const date = readDay(text);
  if (date === undefined) return undefined;
  const [at, on] = [date.month - 1, date.dayOfMonth];
  const isPast = Date.UTC(year, at, on) < now;
  return ahead(now, [date.year ?? (isPast ? year + 1 : year), at, on]);
}

function ahead(now: number, [year, month, day]: readonly [number, number, number]): number | undefined {
  const days = Math.round((Date.UTC(year, month, day) - now) / MS_PER_DAY);
  // The 31st of a month of 30 days is none.
  const isDay = new Date(Date.UTC(year, month, day)).getUTCDate() === day;
  return isDay && days > 0 ? days : undefined;
}
