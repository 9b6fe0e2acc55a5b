import type { MonthDay, Rule, Weekday } from './rule.ts';
import { weekdayNames } from '../weekday.ts';

/**
 * A repeat as an RFC 5545 recurrence rule (section 3.3.10) that yields the same occurrences from any of them on as
 * DTSTART; undefined for what comes once. `count` is how many are left, the first included.
 *
 * - Blocks of weeks begin on the anchor's weekday, so that is WKST.
 * - The 31st, or the last day of a shorter month, is always the last day. Of the 29th and 30th the Februaries that lack
 *   them are left out (`lacksFebruary`) and to be listed as RDATE: BYMONTHDAY=28,29,30 with BYSETPOS=-1 would say it,
 *   but ical.js, which calendars are built on, passes over BYSETPOS beside BYMONTHDAY and shows all three days.
 * - Hours are elapsed time: they hold with a DTSTART in UTC only.
 */
export function recurrence(rule: Rule, anchorDay: Weekday, count?: number): string | undefined {
  const parts = partsOf(rule, anchorDay);
  if (parts === undefined) return undefined;
  return [...parts, ...(count === undefined ? [] : [`COUNT=${count}`])].join(';');
}

function partsOf(rule: Rule, anchorDay: Weekday): readonly string[] | undefined {
  switch (rule.every) {
    case 'once':
    case 'after':
      return undefined;
    case 'hours':
      return ['FREQ=HOURLY', `INTERVAL=${rule.count}`];
    case 'days':
      return ['FREQ=DAILY', `INTERVAL=${rule.count}`];
    case 'weeks':
      return [
        'FREQ=WEEKLY',
        `INTERVAL=${rule.count}`,
        `WKST=${dayCode(anchorDay)}`,
        `BYDAY=${rule.on.map(dayCode).join(',')}`,
      ];
    case 'months':
      return ['FREQ=MONTHLY', `INTERVAL=${rule.count}`, ...monthDay(rule.on)];
  }
}

function monthDay(on: MonthDay): readonly string[] {
  if (on === 'last') return ['BYMONTHDAY=-1'];
  if (typeof on === 'object') return [`BYDAY=${on.nth === 'last' ? -1 : on.nth}${dayCode(on.weekday)}`];
  return [`BYMONTHDAY=${on === 31 ? -1 : on}`];
}

/** Whether a February lacks the day, and has the last one in its place: the rule leaves those out. */
export function lacksFebruary(rule: Rule): boolean {
  return rule.every === 'months' && (rule.on === 29 || rule.on === 30);
}

/** "MO" to "SU". */
function dayCode(weekday: Weekday): string {
  return (weekdayNames[weekday - 1] ?? '').slice(0, 2).toUpperCase();
}
