import { Temporal } from 'temporal-polyfill';
import { Problem } from '../problem.ts';
import { clean } from '../quantity/clean.ts';
import { CLOCK, DAY, noSuchDate, readClock, readDay, type CalendarDay } from '../quantity/dated.ts';
import { say } from '../wording/say.ts';
import { parted, type DayPart } from './day-part.ts';
import { hourSaid } from './hour-said.ts';
import { bareHour, withDigits } from './time-words.ts';

/** A moment in the past as a member said it, and how it was read where that was not said. */
export interface When {
  readonly atMs: number;
  readonly notes: readonly string[];
}

/** Where and when it was said: `zone` is an IANA name, `field` the option it was given for. */
export interface WhenContext {
  readonly field: string;
  readonly nowMs: number;
  readonly zone?: string | undefined;
}

/** Nothing was logged before: a year typed wrong. */
const EARLIEST_MS = Date.UTC(2000, 0, 1);
const NOW = /^(?:just |right |earlier )?(?:now|today)$/;
const AGO =
  /^(\d{1,4}(?:[.,]\d+)?|an?|one|two|three) ?(minutes?|mins?|hours?|hrs?|h|days?|d|weeks?|wks?|months?) (?:ago|back)$/;
/** What leads to a time; "at" stays before an hour without am or pm. */
const LEAD = /^(?:(?:on|from) ?|(?:at|@)(?! ?\d{1,2}(?![\d:]| ?[ap]m)) ?)/;
/** A span ago where only its kind is said. */
const LAST = /^last (week|month)$/;
const ISO_INSTANT = /^\d{4}-\d{2}-\d{2}[t ]\d{2}:\d{2}(?::\d{2}(?:\.\d+)?)?(?:z|[+-]\d{2}:?\d{2})$/;
const FIGURES = /(?<![\d:])\d{1,2}[/.-]\d{1,2}(?:[/.-]\d{2,4})?(?![\d:])/;
const DAY_FIRST = new RegExp(String.raw`^(.*?)(?:[ ,]|(?<=\d)t|^)(?:at )?(${CLOCK}|noon)$`);
const CLOCK_FIRST = new RegExp(String.raw`^(${CLOCK}|noon)(?:,| on)? (.+)$`);
const WEEKDAYS = ['monday', 'tuesday', 'wednesday', 'thursday', 'friday', 'saturday', 'sunday'];
const ONE_DAY = new RegExp(`^(?:${DAY})$`);

/**
 * Reads when something was done: nothing or "now", "2 hours ago", "today 7pm", "yesterday", "monday 9am" (the last
 * one), "2026-01-03 18:00", "3 Jan 18:00", "3 Jan 2026", or ISO 8601 with an offset. Clock times are those of `zone`
 * (UTC where it is not known); one that the clocks skipped moves forward, one that came twice is the first.
 * A day without an hour is noon, or now where that is today.
 *
 * @throws Problem when it lies in the future or before 2000, is no date, or is one in figures: 4/5 is April or May.
 */
export function readWhen(text: string | undefined, context: WhenContext): When {
  const { field, nowMs, zone = 'UTC' } = context;
  const { text: whole, part, words } = parted(withDigits(clean(text ?? 'now')));
  const said = whole.replace(LEAD, '').replace(/^the (?=day )/, '');
  const now = Temporal.Instant.fromEpochMilliseconds(nowMs).toZonedDateTimeISO(zone);
  const scope: Scope = { field, given: (text ?? '').trim(), now, part, words };
  if (NOW.test(said) && part === undefined) return { atMs: nowMs, notes: [] };
  const ago = AGO.exec(said);
  if (ago !== null) return past(before(now, ago[1] ?? '', ago[2] ?? '', scope), [], scope);
  const last = LAST.exec(said)?.[1];
  if (last !== undefined)
    return past(before(now, '1', last, scope), [`${said} taken as a ${last} ago`], scope);
  if (ISO_INSTANT.test(said)) return past(instant(said, scope), [], scope);
  const day = DAY_FIRST.exec(said);
  const clock = CLOCK_FIRST.exec(said);
  if (day !== null) return dayAndClock(day[1] ?? '', day[2], scope);
  if (clock !== null) return dayAndClock(clock[2] ?? '', clock[1], scope);
  return dayAndClock(said, undefined, scope);
}

interface Scope {
  readonly field: string;
  readonly given: string;
  readonly now: Temporal.ZonedDateTime;
  /** The part of the day that was said, and its words. */
  readonly part: DayPart | undefined;
  readonly words: string;
}

function before(
  now: Temporal.ZonedDateTime,
  count: string,
  unit: string,
  scope: Scope,
): Temporal.ZonedDateTime {
  const words: Readonly<Record<string, number>> = { a: 1, an: 1, one: 1, two: 2, three: 3 };
  const many = words[count] ?? Number(count.replace(',', '.'));
  if (unit.startsWith('mo')) return now.subtract({ months: Math.round(many) });
  const days = unit.startsWith('w') ? many * 7 : unit.startsWith('d') ? many : 0;
  if (days > 0) {
    if (!Number.isInteger(days)) throw unreadable(scope);
    return now.subtract({ days });
  }
  return now.subtract({ minutes: Math.round(unit.startsWith('m') ? many : many * 60) });
}

function instant(said: string, scope: Scope): Temporal.ZonedDateTime {
  try {
    return Temporal.Instant.from(said.toUpperCase()).toZonedDateTimeISO(scope.now.timeZoneId);
  } catch (error) {
    if (error instanceof RangeError) throw noSuchDate(scope.field, scope.given);
    throw error;
  }
}

function dayAndClock(dayText: string, clockText: string | undefined, scope: Scope): When {
  const { now } = scope;
  const bare = clockText === undefined ? bareHour(dayText, true) : undefined;
  const day = (bare === undefined ? dayText : dayText.replace(bare.words, '')).replace(/,$/, '').trim();
  const { time, notes: ofHour } = hourSaid({
    clock: clockText === undefined ? undefined : clockTime(clockText, scope),
    isSure: clockText !== undefined && /m$|noon/.test(clockText),
    bare: bare?.hour,
    isToday: day === '' || day === 'today',
    part: scope.part,
    words: scope.words,
    nowHour: now.hour,
  });
  const at = (date: Temporal.PlainDate): Temporal.ZonedDateTime =>
    date.toZonedDateTime({
      timeZone: now.timeZoneId,
      plainTime: new Temporal.PlainTime(time?.hour ?? 12, time?.minute ?? 0),
    });
  const noon = time === undefined ? ['no hour given, taken as 12:00'] : ofHour;
  const today = now.toPlainDate();
  const fit = (date: Temporal.PlainDate, notes: readonly string[] = []): When =>
    time === undefined && date.equals(today)
      ? past(now, [...notes, 'today without an hour, taken as now'], scope)
      : past(at(date), [...notes, ...noon], scope);
  if (day === '' || day === 'today') {
    // "This morning", logged before its usual hour, is now.
    if (clockText === undefined && bare === undefined && isAfter(at(today), now)) {
      return past(now, scope.part === undefined ? noon : [`${scope.words} taken as now`], scope);
    }
    if (day === '' && isAfter(at(today), now)) throw inFuture(scope, [`yesterday ${clockText ?? ''}`]);
    return fit(today);
  }
  if (/^day before yesterday$/.test(day)) return fit(today.subtract({ days: 2 }));
  if (day === 'yesterday') return fit(today.subtract({ days: 1 }));
  const weekday = weekdayOf(day);
  if (weekday !== undefined) {
    const back = (today.dayOfWeek - weekday.number + 7) % 7;
    const latest = today.subtract({ days: back === 0 && weekday.last ? 7 : back });
    const date = time !== undefined && isAfter(at(latest), now) ? latest.subtract({ days: 7 }) : latest;
    return fit(date, [`${day} read as ${date.toString()}`]);
  }
  const written = ONE_DAY.test(day) ? readDay(day) : undefined;
  if (written === undefined) throw unreadable(scope);
  const date = calendarDate(written, scope);
  if (written.year === undefined && isAfter(at(date), now) && !date.equals(today)) {
    throw inFuture(scope, [`${date.subtract({ years: 1 }).toString()} ${clockText ?? ''}`.trim()]);
  }
  return fit(date, written.year === undefined ? [`${day} read as ${date.toString()}`] : []);
}

function clockTime(text: string, scope: Scope): { readonly hour: number; readonly minute: number } {
  const time = text === 'noon' ? { hour: 12, minute: 0 } : readClock(text);
  if (time === undefined || time.hour > 23 || time.minute > 59) throw noSuchDate(scope.field, scope.given);
  return time;
}

/** "monday", "mon", "last thurs": 1 for Monday, and whether today itself is ruled out. */
function weekdayOf(day: string): { readonly number: number; readonly last: boolean } | undefined {
  const found = /^(last |this )?([a-z]{3,9})$/.exec(day);
  const name = found?.[2] ?? '-';
  const number = WEEKDAYS.findIndex((weekday) => weekday.startsWith(name)) + 1;
  return number === 0 ? undefined : { number, last: found?.[1] === 'last ' };
}

function calendarDate({ year, month, dayOfMonth }: CalendarDay, scope: Scope): Temporal.PlainDate {
  try {
    return Temporal.PlainDate.from(
      { year: year ?? scope.now.year, month, day: dayOfMonth },
      { overflow: 'reject' },
    );
  } catch (error) {
    if (error instanceof RangeError) throw noSuchDate(scope.field, scope.given);
    throw error;
  }
}

function isAfter(a: Temporal.ZonedDateTime, b: Temporal.ZonedDateTime): boolean {
  return a.epochMilliseconds > b.epochMilliseconds;
}

function past(at: Temporal.ZonedDateTime, notes: readonly string[], scope: Scope): When {
  if (isAfter(at, scope.now)) throw inFuture(scope);
  if (at.epochMilliseconds >= EARLIEST_MS) return { atMs: at.epochMilliseconds, notes };
  throw new Problem(say('parse.tooLongAgo'), {
    field: scope.field,
    given: scope.given,
    limit: say('parse.limitTooLongAgo'),
  });
}

function inFuture(
  { field, given, now }: Pick<Scope, 'field' | 'given' | 'now'>,
  choices: readonly string[] = [],
): Problem {
  return new Problem(say('parse.inFuture'), {
    field,
    given,
    limit: say('parse.upToNow', {
      time: localTime(now.epochMilliseconds, now.timeZoneId),
      zone: now.timeZoneId,
    }),
    choices,
  });
}

function unreadable({ field, given }: Scope): Problem {
  const hint = FIGURES.test(given) ? say('parse.hintFigures') : say('parse.hintTimes');
  return new Problem(say('parse.noTime'), { field, given, hint });
}

/** "2026-01-03 18:00" by the clock of an IANA zone. */
export function localTime(atMs: number, zone = 'UTC'): string {
  const local = Temporal.Instant.fromEpochMilliseconds(atMs).toZonedDateTimeISO(zone).toPlainDateTime();
  return local.toString({ smallestUnit: 'minute' }).replace('T', ' ');
}
