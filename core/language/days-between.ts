import { readClock, readDay } from '../quantity/dated.ts';
import { MS_PER_DAY } from '../trend/dated.ts';
import { dayOfMonthSaid, weekdaySaid } from './day-said.ts';

/** A time as it was said, on the scale it can be counted on. */
interface Point {
  readonly scale: 'weekday' | 'ago' | 'year' | 'month' | 'hours';
  readonly at: number;
}

const AGO: Readonly<Record<string, number>> = {
  today: 0,
  tonight: 0,
  'this morning': 0,
  'this afternoon': 0,
  'this evening': 0,
  yesterday: 1,
  'last night': 1,
};
const DAYS_AGO = /^(\d{1,3}) days?$/;
const YEAR_DAYS = 365;

/**
 * Days from one time of a message to a later one: weekdays within a week, days of one month or year, "yesterday" and
 * "today", clock times within a day. `today` is the weekday it is asked on, 1 for Monday. Undefined where the two cannot
 * be counted from each other, or are the same day.
 *
 * Check: monday, wednesday -> 2; friday, tuesday -> 4; the 3rd, the 17th -> 14; 9 am, 9 pm -> 0.5.
 */
export function daysBetween(first: string, later: string, today: number): number | undefined {
  const [a, b] = [pointOf(first), pointOf(later)];
  if (a === undefined || b === undefined) return undefined;
  if (a.scale === 'weekday' && b.scale === 'weekday') return above0((b.at - a.at + 7) % 7);
  const [from, to] = [a, b].map((point): Point =>
    point.scale === 'weekday' ? { scale: 'ago', at: (today - point.at + 7) % 7 } : point,
  );
  if (from === undefined || to === undefined || from.scale !== to.scale) return undefined;
  if (from.scale === 'ago') return above0(from.at - to.at);
  if (from.scale === 'hours') return above0(((to.at - from.at + 24) % 24) / 24);
  return above0(from.scale === 'year' ? (to.at - from.at + YEAR_DAYS) % YEAR_DAYS : to.at - from.at);
}

/**
 * Days between the first and the last time of a message that can be counted from each other: dates and days before the
 * hours of a day. Check: 7 am, sunday, tuesday, 7 am -> 2.
 */
export function daysAmong(moments: readonly string[], today: number): number | undefined {
  const isOf = (...scales: readonly Point['scale'][]) =>
    moments.filter((text) => scales.some((scale) => scale === pointOf(text)?.scale));
  for (const said of [isOf('year'), isOf('weekday', 'ago'), isOf('month'), isOf('hours')]) {
    const [first, last] = [said[0], said.at(-1)];
    const days = first === undefined || last === undefined ? undefined : daysBetween(first, last, today);
    if (days !== undefined) return days;
  }
  return undefined;
}

function above0(days: number): number | undefined {
  return days > 0 ? days : undefined;
}

function pointOf(text: string): Point | undefined {
  const days = DAYS_AGO.exec(text)?.[1];
  const ago = AGO[text] ?? (days === undefined ? undefined : Number(days));
  if (ago !== undefined) return { scale: 'ago', at: ago };
  const weekday = weekdaySaid(text);
  if (weekday !== undefined) return { scale: 'weekday', at: weekday };
  const clock = readClock(text);
  if (clock !== undefined) return { scale: 'hours', at: clock.hour + clock.minute / 60 };
  const date = readDay(text);
  if (date !== undefined)
    return { scale: 'year', at: Date.UTC(2001, date.month - 1, date.dayOfMonth) / MS_PER_DAY };
  const day = dayOfMonthSaid(text);
  return day === undefined ? undefined : { scale: 'month', at: day };
}
