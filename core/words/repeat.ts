import { MAX_MESSAGE_LENGTH } from '../message-length.ts';
import { Temporal } from 'temporal-polyfill';
import { Problem } from '../problem.ts';
import { findPhrase } from '../schedule/phrase.ts';
import { nextAfter } from '../schedule/repeat.ts';
import type { Rule } from '../schedule/rule.ts';
import { WEEKDAY } from '../weekday.ts';
import { say } from '../wording/say.ts';
import { ON_DAY, START, startDay } from './repeat-day.ts';
import { hourIn, partHours, parted, type Parted } from './day-part.ts';
import { askBack } from './repeat-doubt.ts';
import { certain, MINUTE_MS, once } from './repeat-once.ts';
import {
  clockTime,
  take,
  TIME,
  unreadable,
  usual,
  without,
  type Left,
  type RepeatContext,
  type Scope,
} from './repeat-said.ts';
import { bareHour, withDigits } from './time-words.ts';
import { localTime } from './when.ts';

/** When a member wants to be told, and the words left over (what of). */
export interface Repeat {
  readonly rule: Rule;
  /** Local date and time the rule counts from, "2026-01-03 09:00"; in the past where the member began it there. */
  readonly anchor: string;
  readonly rest: string;
  /** What was taken for granted. */
  readonly notes: readonly string[];
}

/** What must not stay behind unread. */
const SECOND = new RegExp(String.raw`${TIME.source}|\bon the \d|\b(?:every|each) \d`, 'i');

/**
 * Reads "change floss every other saturday 9am, start 3 jan 2026": the rule, the anchor, and "change floss". Without an
 * hour it is 09:00; without a start the rule begins at its first time later than now.
 *
 * @throws Problem where it says no time, one that is past, or one that means two things (`choices` are whole texts).
 */
export function readRepeat(text: string, context: RepeatContext): Repeat {
  const { field, nowMs, zone } = context;
  const given = text.replace(/\s+/g, ' ').trim();
  if (given.length > MAX_MESSAGE_LENGTH) throw unreadable(field, `${given.slice(0, 60)} ...`);
  askBack(given, field);
  const now = Temporal.PlainDateTime.from(localTime(nowMs, zone));
  const said = parted(withDigits(given.replace(LEAD, '')));
  const left: Left = { text: said.text, notes: [] };
  const started = take(left, START);
  const phrase = findPhrase(left.text, field);
  if (phrase !== undefined) left.text = without(left.text, phrase.words);
  const isToday = phrase === undefined && started === undefined && !OTHER_DAY.test(left.text);
  const time = timeSaid({ ...context, given, now, left, time: undefined }, said, isToday);
  const scope: Scope = { ...context, given, now, left, time };
  if (phrase === undefined) return done(scope, { every: 'once' }, once(scope, started?.[1]));
  const begun = started?.[1] ?? take(left, ON_DAY)?.[1];
  const start = begun === undefined ? undefined : startDay(begun, scope);
  const rule = phrase.plan(start ?? now.toPlainDate());
  return done(scope, rule, anchorOf(scope, rule, start));
}

/** What a wish begins with. */
const LEAD = /^[\s,;:-]*(?:please )?(?:remind me(?: (?:to|about|of)(?= |$))? ?)?/i;
/** A day that is not today: its hours are all to come. */
const OTHER_DAY = new RegExp(
  String.raw`\b(?:tomorrow|in \d|${WEEKDAY}|\d{4}-\d|\d{1,2}(?:st|nd|rd|th)?(?: of)? [a-z]{3}|[a-z]{3,9} \d{1,2}(?:st|nd|rd|th)?\b(?! ?[ap]m))`,
  'i',
);

/**
 * The hour said: on the clock, by a part of the day, or bare. "At 8" is 8:00, or 20:00 where it is of today and 8:00 is
 * past; which one is noted.
 */
function timeSaid(scope: Scope, { text: whole, part, words }: Parted, isToday: boolean): string | undefined {
  const { left, now, field, given } = scope;
  const clock = take(left, TIME);
  if (clock !== undefined) {
    const time = clockTime(clock[1] ?? '', field, given);
    const hour = /m$/i.test(clock[1] ?? '')
      ? Number(time.slice(0, 2))
      : hourIn(part, Number(time.slice(0, 2)));
    return `${twoDigits(hour)}${time.slice(2)}`;
  }
  const bare = bareHour(whole, isToday);
  if (bare === undefined) {
    if (part === undefined) return undefined;
    left.notes.push(`${words} taken as ${twoDigits(partHours[part])}:00`);
    return `${twoDigits(partHours[part])}:00`;
  }
  left.text = without(left.text, bare.words.trim());
  const inPart = hourIn(part, bare.hour);
  const isPast = isToday && part === undefined && inPart <= now.hour && inPart + 12 > now.hour && inPart < 12;
  const hour = isPast ? inPart + 12 : inPart;
  left.notes.push(`${bare.hour} read as ${twoDigits(hour)}:00`);
  return `${twoDigits(hour)}:00`;
}

const twoDigits = (count: number): string => String(count).padStart(2, '0');

/** The local date and time a rule counts from: the start that was said, or its first time later than now. */
function anchorOf(scope: Scope, rule: Rule, start: Temporal.PlainDate | undefined): string {
  if (rule.every === 'hours') return hourly(scope, rule.count, start);
  const at = usual(scope);
  if (start !== undefined) return `${start.toString()} ${at}`;
  const today = scope.now.toPlainDate();
  const fromToday = `${today.toString()} ${at}`;
  if (rule.every === 'after') {
    scope.left.notes.push('the first one counted from today');
    return `${today.add({ days: rule.days }).toString()} ${at}`;
  }
  return firstTime(scope, rule, fromToday);
}

/** A named day is the next of its kind, however long the step: every other Saturday begins this Saturday. */
function firstTime({ zone, nowMs }: Scope, rule: Rule, fromToday: string): string {
  const search: Rule = rule.every === 'weeks' ? { ...rule, count: 1 } : rule;
  const next = nextAfter(fromToday, zone, search, nowMs);
  if (next === undefined) return fromToday;
  return `${localTime(next.atMs, zone).slice(0, 10)} ${fromToday.slice(11)}`;
}

function hourly(scope: Scope, hours: number, start?: Temporal.PlainDate): string {
  const { now, time, nowMs, zone } = scope;
  if (start === undefined && time === undefined) {
    return certain(nowMs + hours * 60 * MINUTE_MS, zone);
  }
  return `${(start ?? now.toPlainDate()).toString()} ${usual(scope)}`;
}

/** The repeat with the words left over. @throws Problem where they hold a second time. */
function done({ left, field, given }: Scope, rule: Rule, anchor: string): Repeat {
  if (findPhrase(left.text, field) !== undefined || SECOND.test(left.text)) {
    throw new Problem(say('parse.moreThanOneTime'), {
      field,
      given,
      hint: say('parse.hintOneTime'),
    });
  }
  const rest = left.text
    .replace(LEAD, '')
    .replace(/[\s,;:.-]+$/, '')
    .replace(/ ,/g, ',');
  return { rule, anchor, rest, notes: left.notes };
}
