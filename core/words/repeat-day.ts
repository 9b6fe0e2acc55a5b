import { Temporal } from 'temporal-polyfill';
import { DAY as ANY_DAY, noSuchDate, readDay } from '../quantity/dated.ts';
import { WEEKDAY, weekdayOf } from '../weekday.ts';
import { instantOf } from '../schedule/zone.ts';
import { unreadable, type Scope } from './repeat-said.ts';

/** A day with a real month in it: "dose 5 ml" holds none. */
const DAY = ANY_DAY.replaceAll(
  '[a-z]{3,9}',
  '(?:jan|feb|mar|apr|may|june?|july?|aug|sept?|oct|nov|dec)(?:uary|ruary|ch|il|ust|ember|tember|ober)?',
);
/** The day a repeat begins: "starting on 3 jan 2026". */
export const START = new RegExp(
  String.raw`,? ?(?:\(|\b)(?:start(?:s|ing)?|beginning|from)(?: on| from)? (${DAY}|today|tomorrow|${WEEKDAY})\)?`,
  'i',
);
/** A day by its date, today or tomorrow. */
export const ON_DAY = new RegExp(String.raw`\b(?:on )?(today|tomorrow|${DAY})(?![\w-])`, 'gi');

/** The day a rule starts: without a year the nearest one, before or after today. */
export function startDay(text: string, scope: Scope): Temporal.PlainDate {
  const today = scope.now.toPlainDate();
  return dayNamed(text, scope, '23:59', today.subtract({ months: 6 }));
}

/** A day in words, at or after `from` where its year is left open. */
export function dayNamed(
  text: string,
  { now, left, field, given, zone, nowMs }: Scope,
  at: string,
  from: Temporal.PlainDate = now.toPlainDate(),
): Temporal.PlainDate {
  const today = now.toPlainDate();
  const said = text.toLowerCase();
  if (said === 'today') return today;
  if (said === 'tomorrow') return today.add({ days: 1 });
  const written = new RegExp(`^(?:${DAY})$`).test(said) ? readDay(said) : undefined;
  if (written === undefined && new RegExp(`^${WEEKDAY}$`).test(said)) {
    const ahead = (weekdayOf(said) - today.dayOfWeek + 7) % 7;
    const over = ahead === 0 && instantOf(`${today.toString()} ${at}`, zone) <= nowMs;
    const day = today.add({ days: over ? 7 : ahead });
    left.notes.push(`${said} read as ${day.toString()}`);
    return day;
  }
  if (written === undefined) throw unreadable(field, given);
  const { year, month, dayOfMonth } = written;
  // A 29 February may be eight years away (1896 to 1904, 2096 to 2104).
  const years = year === undefined ? Array.from({ length: 10 }, (_, index) => from.year + index) : [year];
  const days = years.map((each) => new Temporal.PlainDate(each, 1, 1).add({ months: month - 1 }));
  const fits = days
    .filter((first) => month >= 1 && month <= 12 && dayOfMonth >= 1 && dayOfMonth <= first.daysInMonth)
    .map((first) => first.add({ days: dayOfMonth - 1 }))
    .find((day) => year !== undefined || Temporal.PlainDate.compare(day, from) >= 0);
  if (fits === undefined || fits.year < 2000 || fits.year > today.year + 100) throw noSuchDate(field, given);
  if (year === undefined) left.notes.push(`${text} read as ${fits.toString()}`);
  return fits;
}
