import { Problem } from '../problem.ts';
import { say } from '../wording/say.ts';
import { clean } from './clean.ts';

/** A text with the local date taken off its end: "9.3 dKH on 3 Jan 18:00" is "9.3 dKH" at a time. */
export interface Dated {
  readonly text: string;
  /** Days since 1970-01-01 of the local clock, with the fraction of the day; undefined without a date. */
  readonly day: number | undefined;
  /** The year where none was written: the caller's own. */
  readonly assumedYear: number | undefined;
}

/** A day of the calendar as written; without a year where none was. It need not exist. */
export interface CalendarDay {
  readonly year: number | undefined;
  /** 1 to 12. */
  readonly month: number;
  readonly dayOfMonth: number;
}

/** A time of day; it need not exist: 25:00 and 13 pm are hour 25. */
export interface ClockTime {
  readonly hour: number;
  readonly minute: number;
}

const MONTHS = [
  'january',
  'february',
  'march',
  'april',
  'may',
  'june',
  'july',
  'august',
  'september',
  'october',
  'november',
  'december',
];
const MS_PER_DAY = 86_400_000;

/**
 * Patterns of a cleaned text: a day in words or as year-month-day, and a time of day. A date in other figures is left
 * alone, since 4/5 is April in one country and May in another.
 */
export const DAY = String.raw`\d{4}-\d{1,2}-\d{1,2}|\d{1,2}(?:st|nd|rd|th|\.)? (?:of )?[a-z]{3,9}\.?(?:,? \d{4})?|[a-z]{3,9}\.? \d{1,2}(?:st|nd|rd|th)?(?:,? \d{4})?`;
export const CLOCK = String.raw`\d{1,2}:\d{2}(?: ?[ap]m)?|\d{1,2} ?[ap]m`;

const TAIL = new RegExp(String.raw`^(.*?)\s*(?:\bon\b|@|\bat\b)\s*(${DAY})(?:[ t,]+(?:at )?(${CLOCK}))?$`);

/**
 * Takes a date off the end of a reading: "8.4 on 2026-01-03", "8.4 @ 3 Jan 2026 18:30", "8.4 on Jan 3 6 pm".
 *
 * `thisYear` is the year of a date without one; a date without a time is noon.
 *
 * @throws Problem for a date the calendar does not have.
 */
export function splitDate(text: string, field: string, thisYear: number): Dated {
  const found = TAIL.exec(clean(text));
  const undated = { text, day: undefined, assumedYear: undefined };
  if (found === null) return undated;
  const [, value = '', date = '', clock = '12:00'] = found;
  const parts = readDay(date);
  const time = readClock(clock);
  if (parts === undefined || time === undefined) return undated;
  const { year = thisYear, month, dayOfMonth } = parts;
  const ms = Date.UTC(year, month - 1, dayOfMonth, time.hour, time.minute);
  const back = new Date(ms);
  if (
    back.getUTCMonth() !== month - 1 ||
    back.getUTCDate() !== dayOfMonth ||
    time.hour > 23 ||
    time.minute > 59
  ) {
    throw noSuchDate(field, text);
  }
  return { text: value, day: ms / MS_PER_DAY, assumedYear: parts.year === undefined ? thisYear : undefined };
}

export function noSuchDate(field: string, text: string): Problem {
  return new Problem(say('parse.noSuchDate'), {
    field,
    given: text.trim(),
    limit: say('parse.dateForms'),
  });
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

/** A text of the form `DAY` taken apart; undefined where its word is no month: "3 jan", "jan 3rd, 2026". */
export function readDay(date: string): CalendarDay | undefined {
  const iso = /^(\d{4})-(\d{1,2})-(\d{1,2})$/.exec(date);
  if (iso !== null) return { year: Number(iso[1]), month: Number(iso[2]), dayOfMonth: Number(iso[3]) };
  const name = /(?<![a-z\d])(?!of )[a-z]{3,9}/.exec(date)?.[0] ?? '';
  const month =
    name === ''
      ? 0
      : MONTHS.findIndex((each) => each.startsWith(name) || (name === 'sept' && each === 'september')) + 1;
  const year = /\d{4}/.exec(date)?.[0];
  const dayOfMonth = /(?<!\d)\d{1,2}(?!\d)/.exec(date)?.[0];
  if (month === 0 || dayOfMonth === undefined) return undefined;
  return { year: year === undefined ? undefined : Number(year), month, dayOfMonth: Number(dayOfMonth) };
}

/** A text of the form `CLOCK` taken apart: "7pm" is 19:00, "12 am" 0:00; undefined where it is none. */
export function readClock(text: string): ClockTime | undefined {
  const found = /^(\d{1,2})(?::(\d{2}))? ?([ap]m)?$/.exec(text);
  if (found === null || (found[2] === undefined && found[3] === undefined)) return undefined;
  const [, hours, minutes = '0', half] = found;
  const hour = Number(hours);
  const minute = Number(minutes);
  if (half === undefined) return { hour, minute };
  if (hour < 1 || hour > 12) return { hour: 25, minute };
  return { hour: (hour % 12) + (half === 'pm' ? 12 : 0), minute };
}
