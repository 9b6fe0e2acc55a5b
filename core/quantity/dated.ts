import { Problem } from '../problem.ts';
import { clean } from './clean.ts';

/** A text with the local date taken off its end: "9.3 dKH on 3 Jan 18:00" is "9.3 dKH" at a time. */
export interface Dated {
  readonly text: string;
  /** Days since 1970-01-01 of the local clock, with the fraction of the day; undefined without a date. */
  readonly day: number | undefined;
  /** The year where none was written: the caller's own. */
  readonly assumedYear: number | undefined;
}

const MONTHS = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'];
const MS_PER_DAY = 86_400_000;

const TAIL =
  /^(.*?)\s*(?:\bon\b|@|\bat\b)\s*(\d{4}-\d{1,2}-\d{1,2}|\d{1,2}\.? [a-z]{3,9}\.?(?: \d{4})?|[a-z]{3,9}\.? \d{1,2}(?:,? \d{4})?)(?:[ t,]+(\d{1,2}):(\d{2}))?$/;

/**
 * Takes a date off the end of a reading: "8.4 on 2026-01-03", "8.4 @ 3 Jan 2026 18:30", "8.4 on Jan 3". A date in
 * figures is read only as year-month-day, since 4/5 is April in one country and May in another.
 *
 * `thisYear` is the year of a date without one.
 *
 * @throws Problem for a date the calendar does not have.
 */
export function splitDate(text: string, field: string, thisYear: number): Dated {
  const found = TAIL.exec(clean(text));
  const undated = { text, day: undefined, assumedYear: undefined };
  if (found === null) return undated;
  const [, value = '', date = '', hour = '12', minute = '0'] = found;
  const parts = dateParts(date);
  if (parts === undefined) return undated;
  const { year = thisYear, month, dayOfMonth } = parts;
  const ms = Date.UTC(year, month - 1, dayOfMonth, Number(hour), Number(minute));
  const back = new Date(ms);
  if (
    back.getUTCMonth() !== month - 1 ||
    back.getUTCDate() !== dayOfMonth ||
    Number(hour) > 23 ||
    Number(minute) > 59
  ) {
    throw new Problem('There is no such date or time.', {
      field,
      given: text.trim(),
      limit: '2026-01-03 or 3 Jan 18:00',
    });
  }
  return { text: value, day: ms / MS_PER_DAY, assumedYear: parts.year === undefined ? thisYear : undefined };
}

/**
 * Days from one dated text to the next. A pair without years that runs backwards crossed the new year.
 *
 * @returns undefined unless both carry a date.
 */
export function daysBetween(before: Dated, now: Dated): number | undefined {
  if (before.day === undefined || now.day === undefined) return undefined;
  const days = now.day - before.day;
  if (days >= 0 || before.assumedYear === undefined || now.assumedYear === undefined) return days;
  return days + (Date.UTC(now.assumedYear + 1, 0) - Date.UTC(now.assumedYear, 0)) / MS_PER_DAY;
}

interface DateParts {
  readonly year: number | undefined;
  readonly month: number;
  readonly dayOfMonth: number;
}

function dateParts(date: string): DateParts | undefined {
  const iso = /^(\d{4})-(\d{1,2})-(\d{1,2})$/.exec(date);
  if (iso !== null) return { year: Number(iso[1]), month: Number(iso[2]), dayOfMonth: Number(iso[3]) };
  const name = /[a-z]{3}/.exec(date)?.[0] ?? '';
  const month = MONTHS.indexOf(name) + 1;
  const year = /\d{4}/.exec(date)?.[0];
  const dayOfMonth = /(?<!\d)\d{1,2}(?!\d)/.exec(date)?.[0];
  if (month === 0 || dayOfMonth === undefined) return undefined;
  return { year: year === undefined ? undefined : Number(year), month, dayOfMonth: Number(dayOfMonth) };
}
