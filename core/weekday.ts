import type { Weekday } from './schedule/rule.ts';

export const weekdayNames = [
  'Monday',
  'Tuesday',
  'Wednesday',
  'Thursday',
  'Friday',
  'Saturday',
  'Sunday',
] as const;

/** Patterns of one weekday in a text, and of several: "sat", "tues and fri", "mon, wed & fri", "weekdays". */
export const WEEKDAY = String.raw`(?:mon|tue|wed|thu|fri|sat|sun)(?:s|rs?|days?|sdays?|nesdays?|rsdays?|urdays?)?\b`;
const ONE = String.raw`(?:${WEEKDAY}|weekdays?\b|weekends?\b)`;
export const WEEKDAYS = String.raw`${ONE}(?:(?:,? and |, ?| ?& ?|\/)${ONE})*`;

/** 1 for "mon" to 7 for "sunday". */
export function weekdayOf(text: string): Weekday {
  return (weekdayNames.findIndex((name) => name.toLowerCase().startsWith(text.slice(0, 3).toLowerCase())) +
    1) as Weekday;
}

/** A text of the form `WEEKDAYS`: the days in it, each once, from Monday. */
export function weekdaysOf(text: string): readonly Weekday[] {
  const found = text.match(new RegExp(ONE, 'gi')) ?? [];
  const days = found.flatMap((one): Weekday[] => {
    if (/^weekd/i.test(one)) return [1, 2, 3, 4, 5];
    return /^weeke/i.test(one) ? [6, 7] : [weekdayOf(one)];
  });
  return [...new Set(days)].sort();
}
