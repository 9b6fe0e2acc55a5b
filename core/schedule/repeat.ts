import { Temporal } from 'temporal-polyfill';
import { localTime } from '../words/when.ts';
import type { MonthDay, Rule, Weekday } from './rule.ts';
import { instantOf } from './zone.ts';

/** An occurrence: how many came before it, and its instant in ms since 1970-01-01T00:00Z. */
export interface Occurrence {
  readonly index: number;
  readonly atMs: number;
}

const HOUR_MS = 3_600_000;
/** Nothing is planned further ahead than this from its anchor. */
const REACH_DAYS = 36_525;
const REACH_MS = REACH_DAYS * 24 * HOUR_MS;

/**
 * The instant of the occurrence `index` (0 is the first on or after the anchor's date), counted from the anchor
 * ("2026-01-31 09:00") by the calendar of `zone`: 31 January monthly is 28 February, then 31 March.
 *
 * @returns undefined where there is none: a second of `once` or `after`, or more than 100 years on.
 */
export function occurrence(anchor: string, zone: string, rule: Rule, index: number): number | undefined {
  const firstMs = instantOf(anchor, zone);
  const date = rule.every === 'hours' ? undefined : dateAt(anchor, rule, index);
  const onDay = date === undefined ? undefined : instantOf(`${date} ${anchor.slice(11)}`, zone);
  const atMs = rule.every === 'hours' ? firstMs + index * rule.count * HOUR_MS : onDay;
  return atMs === undefined || index < 0 || atMs > firstMs + REACH_MS ? undefined : atMs;
}

/**
 * The first occurrence later than `afterMs`, or undefined where none follows. Two that fall on one instant (only
 * where a zone skipped a whole day) count as one. The index is estimated from the calendar, so the work does not grow
 * with the time since the anchor.
 */
export function nextAfter(anchor: string, zone: string, rule: Rule, afterMs: number): Occurrence | undefined {
  const first = occurrence(anchor, zone, rule, 0);
  if (first === undefined || first > afterMs)
    return first === undefined ? undefined : { index: 0, atMs: first };
  if (afterMs > first + REACH_MS) return undefined;
  for (let index = indexBefore(anchor, zone, rule, afterMs); ; index++) {
    const atMs = occurrence(anchor, zone, rule, index);
    if (atMs === undefined || atMs > afterMs) return atMs === undefined ? undefined : { index, atMs };
  }
}

/**
 * The last occurrence at or before `atMs`, or undefined where none has come yet: the way back of `nextAfter`.
 */
export function latestUpTo(anchor: string, zone: string, rule: Rule, atMs: number): Occurrence | undefined {
  const first = occurrence(anchor, zone, rule, 0);
  if (first === undefined || first > atMs) return undefined;
  let found: Occurrence = { index: 0, atMs: first };
  for (let index = indexBefore(anchor, zone, rule, atMs); ; index++) {
    const next = occurrence(anchor, zone, rule, index);
    if (next === undefined || next > atMs) return found;
    found = { index, atMs: next };
  }
}

/** The anchor after one has been done: so many days after that local day, at the anchor's time of day. */
export function anchorAfter(anchor: string, zone: string, days: number, doneMs: number): string {
  const done = Temporal.PlainDate.from(localTime(doneMs, zone));
  return `${done.add({ days }).toString()} ${anchor.slice(11)}`;
}

/** The local date ("2026-02-28") meant by an occurrence of a rule counted in days, weeks or months. */
export function dateAt(
  anchor: string,
  rule: Exclude<Rule, { every: 'hours' }>,
  index: number,
): string | undefined {
  const start = Temporal.PlainDate.from(anchor);
  if (index * shortestDays(rule) > REACH_DAYS) return undefined;
  switch (rule.every) {
    case 'once':
    case 'after':
      return index === 0 ? start.toString() : undefined;
    case 'days':
      return start.add({ days: index * rule.count }).toString();
    case 'weeks': {
      const offsets = daysOn(start, rule.on);
      const block = Math.floor(index / offsets.length);
      const days = block * 7 * rule.count + (offsets[index % offsets.length] ?? 0);
      return start.add({ days }).toString();
    }
    case 'months': {
      const month = start.toPlainYearMonth();
      const past = Temporal.PlainDate.compare(dayIn(month, rule.on), start) < 0 ? 1 : 0;
      return dayIn(month.add({ months: past + index * rule.count }), rule.on).toString();
    }
  }
}

/** Days from `start` to the first of each weekday on or after it, in order, each once. */
function daysOn(start: Temporal.PlainDate, on: readonly Weekday[]): number[] {
  const offsets = on.map((weekday) => (weekday - start.dayOfWeek + 7) % 7);
  return [...new Set(offsets)].sort((a, b) => a - b);
}

function dayIn(month: Temporal.PlainYearMonth, on: MonthDay): Temporal.PlainDate {
  if (on === 'last') return month.toPlainDate({ day: month.daysInMonth });
  if (typeof on === 'number') return month.toPlainDate({ day: Math.min(on, month.daysInMonth) });
  const { nth, weekday } = on;
  if (nth === 'last') {
    const last = month.toPlainDate({ day: month.daysInMonth });
    return last.subtract({ days: (last.dayOfWeek - weekday + 7) % 7 });
  }
  const first = month.toPlainDate({ day: 1 });
  return first.add({ days: ((weekday - first.dayOfWeek + 7) % 7) + 7 * (nth - 1) });
}

/** A lower bound of the days one occurrence takes up, 0 where there is only one. */
function shortestDays(rule: Exclude<Rule, { every: 'hours' }>): number {
  if (rule.every === 'days') return rule.count;
  if (rule.every === 'weeks') return rule.count;
  return rule.every === 'months' ? 28 * rule.count : 0;
}

/** An index at or a few before the last occurrence up to `afterMs`. */
function indexBefore(anchor: string, zone: string, rule: Rule, afterMs: number): number {
  const start = Temporal.PlainDate.from(anchor);
  const day = Temporal.PlainDate.from(localTime(afterMs, zone));
  const days = start.until(day, { largestUnit: 'days' }).days;
  const months = (day.year - start.year) * 12 + day.month - start.month;
  switch (rule.every) {
    case 'once':
    case 'after':
      return 1;
    case 'hours':
      return back((afterMs - instantOf(anchor, zone)) / (rule.count * HOUR_MS));
    case 'days':
      return back(days / rule.count);
    case 'weeks':
      return back(days / (7 * rule.count)) * daysOn(start, rule.on).length;
    case 'months':
      return back(months / rule.count);
  }
}

function back(steps: number): number {
  return Math.max(0, Math.floor(steps) - 1);
}
