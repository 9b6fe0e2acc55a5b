import { createRequire } from 'node:module';
import { Temporal } from 'temporal-polyfill';
import { localTime } from '../words/when.ts';
import { zoneBlock } from './ical-zone.ts';
import { dateAt, nextAfter, occurrence, type Occurrence } from './repeat.ts';
import { lacksFebruary, recurrence } from './rrule.ts';
import type { Rule, Weekday } from './rule.ts';

const require = createRequire(import.meta.url);

/** One schedule as it stands in a calendar. */
export interface CalendarEntry {
  /** The same for the same schedule each time it is written. */
  readonly uid: string;
  readonly summary: string;
  readonly anchor: string;
  readonly zone: string;
  readonly rule: Rule;
  /** The first occurrence shown is the first at or after this. */
  readonly fromMs: number;
  /** Occurrences in all, counted from the anchor. */
  readonly times?: number | undefined;
  /** Occurrences in here are left out. */
  readonly pause?: { readonly fromMs: number; readonly untilMs: number } | undefined;
}

/** Dates are listed one by one for so long where no rule can say them, and at most so many. */
const LISTED_MS = 366 * 86_400_000;
const MOST_LISTED = 400;
const TEN_YEARS_MS = 10 * LISTED_MS;

/** An event as it is written: in local time of a zone, or in UTC. */
interface Written {
  readonly id: string;
  readonly summary: string;
  readonly start: Temporal.PlainDateTime | Date;
  readonly zone?: string;
  readonly lines?: readonly string[];
}

/**
 * An RFC 5545 calendar. A repeat is a rule where RFC 5545 can say it exactly, in the zone's own wall time; hours are
 * elapsed time and stand in UTC; in a zone whose clock changes the calendar cannot carry, a year of dates in UTC.
 */
export function calendarText(name: string, entries: readonly CalendarEntry[], nowMs: number): string {
  const { ICalCalendar } = require('ical-generator') as typeof import('ical-generator');
  const calendar = new ICalCalendar({
    name,
    prodId: { company: 'Sumpside', product: 'reminders', language: 'EN' },
    timezone: { name: null, generator: (zone: string) => zoneBlock(zone, nowMs) ?? null },
  });
  for (const { id, summary, start, zone, lines = [] } of entries.flatMap((entry) =>
    writtenOf(entry, nowMs),
  )) {
    calendar.createEvent({
      id,
      summary,
      start,
      stamp: new Date(nowMs),
      timezone: zone ?? null,
      // The library takes a single line that is no RRULE for one, so a list of dates begins with a rule of one.
      repeating: lines.length === 0 ? null : lines.join('\r\n'),
    });
  }
  return calendar.toString();
}

function writtenOf(entry: CalendarEntry, nowMs: number): readonly Written[] {
  const { uid, anchor, zone, rule, fromMs, times } = entry;
  const first = nextAfter(anchor, zone, rule, fromMs - 1);
  if (first === undefined || first.index >= (times ?? Infinity)) return [];
  const inUtc = rule.every === 'hours' || isUtc(zone);
  if (!inUtc && zoneBlock(zone, nowMs) === undefined) return [listed(entry, first)];
  if (times !== undefined && lacksFebruary(rule)) return [listed(entry, first)];
  const single = startOf(entry, first, inUtc);
  if (isOutside(entry, first)) return [single, ...writtenOf({ ...entry, fromMs: first.atMs + 1 }, nowMs)];
  const format = inUtc ? utc : (atMs: number): string => compact(localTime(atMs, zone));
  const lines = ruleLines(entry, first.index, format, inUtc ? ':' : `;TZID=${zone}:`);
  return [{ ...single, id: uid, lines }];
}

/** The first occurrence by itself, with an id of its own. */
function startOf(
  { uid, summary, zone }: CalendarEntry,
  { atMs, index }: Occurrence,
  inUtc: boolean,
): Written {
  const id = `${index}-${uid}`;
  if (inUtc) return { id, summary, start: new Date(atMs) };
  return { id, summary, start: Temporal.PlainDateTime.from(localTime(atMs, zone)), zone };
}

/**
 * A first occurrence that the rule does not yield stands alone, since as DTSTART it would move all that follow: one the
 * clocks skipped, or a 28 February in place of the 29th or 30th.
 */
function isOutside({ zone, rule, anchor }: CalendarEntry, { atMs, index }: Occurrence): boolean {
  if (rule.every === 'hours') return false;
  const day = dateAt(anchor, rule, index) ?? '';
  return localTime(atMs, zone) !== `${day} ${anchor.slice(11)}` || isShort(rule, day);
}

function isShort(rule: Rule, day: string): boolean {
  return lacksFebruary(rule) && rule.every === 'months' && Number(day.slice(8, 10)) !== rule.on;
}

function ruleLines(
  entry: CalendarEntry,
  index: number,
  format: (atMs: number) => string,
  parameters: string,
): readonly string[] {
  const { rule, anchor, times, pause } = entry;
  const anchorDay = Temporal.PlainDate.from(anchor).dayOfWeek as Weekday;
  const text = recurrence(rule, anchorDay, times === undefined ? undefined : times - index);
  if (text === undefined) return [];
  const out = pause === undefined ? [] : occurrencesIn(entry, index, pause.fromMs, pause.untilMs);
  const list = (name: string, dates: readonly number[]): readonly string[] =>
    dates.length === 0 ? [] : [`${name}${parameters}${dates.map(format).join(',')}`];
  const added = februaries(entry, index).filter((atMs) => !out.includes(atMs));
  return [`RRULE:${text}`, ...list('RDATE', added), ...list('EXDATE', out)];
}

/** Ten years of the last days of February that stand for a 29th or 30th. */
function februaries(entry: CalendarEntry, index: number): readonly number[] {
  const { rule, zone, fromMs } = entry;
  if (!lacksFebruary(rule)) return [];
  const all = occurrencesIn(entry, index, fromMs, fromMs + TEN_YEARS_MS);
  return all.filter((atMs) => isShort(rule, localTime(atMs, zone)));
}

function listed(entry: CalendarEntry, first: Occurrence): Written {
  const { uid, summary, pause } = entry;
  const all = occurrencesIn(entry, first.index, first.atMs, first.atMs + LISTED_MS);
  const shown = all.filter((atMs) => pause === undefined || atMs < pause.fromMs || atMs >= pause.untilMs);
  const dates = shown.slice(1).map(utc);
  const lines = dates.length === 0 ? [] : ['RRULE:FREQ=DAILY;COUNT=1', `RDATE:${dates.join(',')}`];
  return { id: uid, summary, start: new Date(first.atMs), lines };
}

function occurrencesIn(
  { anchor, zone, rule, times = Infinity }: CalendarEntry,
  fromIndex: number,
  fromMs: number,
  untilMs: number,
): readonly number[] {
  const found: number[] = [];
  for (let index = fromIndex; index < times && found.length < MOST_LISTED; index++) {
    const atMs = occurrence(anchor, zone, rule, index);
    if (atMs === undefined || atMs >= untilMs) break;
    if (atMs >= fromMs) found.push(atMs);
  }
  return found;
}

function isUtc(zone: string): boolean {
  return /^(?:etc\/)?utc$/i.test(zone);
}

/** "20260103T090000Z". */
function utc(atMs: number): string {
  return `${compact(localTime(atMs, 'UTC'))}Z`;
}

function compact(local: string): string {
  return `${local.replaceAll(/[-:]/g, '').replace(' ', 'T')}00`;
}
