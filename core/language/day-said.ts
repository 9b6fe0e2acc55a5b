import { WEEKDAY, weekdayOf } from '../weekday.ts';

const ORDINAL = /^(?:the )?(\d{1,2})(?:st|nd|rd|th)$/;
const ONE_WEEKDAY = new RegExp(`^${WEEKDAY}`);

/** "the 14th": the day of a month that is not named, which need not exist. */
export function dayOfMonthSaid(text: string): number | undefined {
  const day = ORDINAL.exec(text)?.[1];
  return day === undefined ? undefined : Number(day);
}

/** 1 for "mon" to 7 for "sunday"; undefined where a text begins with no weekday. */
export function weekdaySaid(text: string): number | undefined {
  return ONE_WEEKDAY.test(text) ? weekdayOf(text) : undefined;
}
