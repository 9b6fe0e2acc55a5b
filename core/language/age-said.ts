import type { Scanned } from './tokens.ts';

/** A tank is young below this many months; common practice, no source. */
const YOUNG_MONTHS = 4;

/** Months in a unit of age. */
const MONTHS: Readonly<Record<string, number>> = {
  day: 1 / 30,
  days: 1 / 30,
  week: 7 / 30,
  weeks: 7 / 30,
  month: 1,
  months: 1,
};

/** "month old nano", "6 week old tank": an age said as such, of something young. */
export function isYoungSaid({ text }: Scanned): boolean {
  return [...text.matchAll(/(?:(\d{1,3}) ?-?)?\b(days?|weeks?|months?)[ -]old\b/g)].some(
    ([, count = '1', unit = '']) => Number(count) * (MONTHS[unit] ?? Infinity) < YOUNG_MONTHS,
  );
}
