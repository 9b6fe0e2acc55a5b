import { Temporal } from 'temporal-polyfill';
import { Problem } from '../problem.ts';
import { CLOCK, DAY as ANY_DAY, noSuchDate, readClock, readDay } from '../quantity/dated.ts';
import { findPhrase, NUMBER, numberOf } from '../schedule/phrase.ts';
import { nextAfter } from '../schedule/repeat.ts';
import type { Rule } from '../schedule/rule.ts';
import { WEEKDAY, weekdayOf } from '../schedule/weekday.ts';
import { instantOf } from '../schedule/zone.ts';
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

export interface RepeatContext {
  readonly field: string;
  readonly nowMs: number;
  /** IANA name. */
  readonly zone: string;
}

/** The longest text read. */
const MAX_LENGTH = 2000;
/** The hour where none is said; common practice, no source. */
const USUAL_TIME = '09:00';
const MINUTE_MS = 60_000;
const EXAMPLES =
  'Say for example: every other saturday 9am, every 31st, first monday of the month 8:00, every 12 hours, in 3 days, 3 days after I last did it.';

/** Words that mean two things, and what to ask back in their place. */
const DOUBTFUL: readonly (readonly [RegExp, readonly string[]])[] = [
  [/\bbi-?weekly\b/i, ['twice a week', 'every 2 weeks']],
  [/\bbi-?monthly\b/i, ['every 2 weeks', 'every 2 months']],
  [/\bbi-?(?:annual(?:ly)?|ennial(?:ly)?|yearly)\b/i, ['twice a year', 'every 2 years']],
  [
    new RegExp(String.raw`\b(?:every|each) (?:second|2nd) (${WEEKDAY})(?! (?:of|in|every|each)\b)`, 'i'),
    ['every other $1', 'second $1 of every month'],
  ],
  [
    new RegExp(String.raw`\b(?:every|each) (?:third|3rd) (${WEEKDAY})(?! (?:of|in|every|each)\b)`, 'i'),
    ['every 3 weeks on $1', 'third $1 of every month'],
  ],
  [/\bat (1[0-2]|[1-9])$/i, ['at $1am', 'at $1pm']],
];
/** A day with a real month in it: "dose 5 ml" holds none. */
const DAY = ANY_DAY.replaceAll(
  '[a-z]{3,9}',
  '(?:jan|feb|mar|apr|may|june?|july?|aug|sept?|oct|nov|dec)(?:uary|ruary|ch|il|ust|ember|tember|ober)?',
);
const TIME = new RegExp(
  String.raw`,? ?(?:\b(?:at|by) |@ ?)?(?<![\d:.])\b(${CLOCK}|noon|midnight)\b(?!:)`,
  'i',
);
/** What must not stay behind unread. */
const SECOND = new RegExp(String.raw`${TIME.source}|\bon the \d|\b(?:every|each) \d`, 'i');
const START = new RegExp(
  String.raw`,? ?(?:\(|\b)(?:start(?:s|ing)?|beginning|from)(?: on| from)? (${DAY}|today|tomorrow|${WEEKDAY})\)?`,
  'i',
);
const IN = new RegExp(
  String.raw`\bin (${NUMBER}) (min(?:ute)?s?|hours?|hrs?|h|days?|weeks?|wks?|months?|years?|yrs?)\b`,
  'i',
);
const ON_DAY = new RegExp(String.raw`\b(?:on )?(today|tomorrow|${DAY})(?![\w-])`, 'gi');
const ON_WEEKDAY = new RegExp(
  String.raw`(?:\b(?:on|this|next|coming) |^)(${WEEKDAY})(?: |$)|\b(${WEEKDAY})$`,
  'i',
);

/**
 * Reads "change floss every other saturday 9am, start 3 jan 2026": the rule, the anchor, and "change floss". Without an
 * hour it is 09:00; without a start the rule begins at its first time later than now.
 *
 * @throws Problem where it says no time, one that is past, or one that means two things (`choices` are whole texts).
 */
export function readRepeat(text: string, context: RepeatContext): Repeat {
  const { field, nowMs, zone } = context;
  const given = text.replace(/\s+/g, ' ').trim();
  if (given.length > MAX_LENGTH) throw unreadable(field, `${given.slice(0, 60)} ...`);
  askBack(given, field);
  const now = Temporal.PlainDateTime.from(localTime(nowMs, zone));
  const left: Left = { text: given, notes: [] };
  const started = take(left, START);
  const phrase = findPhrase(left.text, field);
  if (phrase !== undefined) left.text = without(left.text, phrase.words);
  const clock = take(left, TIME);
  const time = clock === undefined ? undefined : clockTime(clock[1] ?? '', field, given);
  const scope: Scope = { ...context, given, now, left, time };
  if (phrase === undefined) return once(scope, started?.[1]);
  const begun = started?.[1] ?? take(left, ON_DAY)?.[1];
  const start = begun === undefined ? undefined : startDay(begun, scope);
  const today = now.toPlainDate();
  const rule = phrase.plan(start ?? today);
  if (rule.every === 'hours') return hourly(scope, rule, start);
  const at = usual(scope);
  if (start !== undefined) return done(scope, rule, `${start.toString()} ${at}`);
  const fromToday = `${today.toString()} ${at}`;
  if (rule.every === 'after') {
    left.notes.push('the first one counted from today');
    return done(scope, rule, `${today.add({ days: rule.days }).toString()} ${at}`);
  }
  return done(scope, rule, firstTime(scope, rule, fromToday));
}

interface Left {
  text: string;
  readonly notes: string[];
}

interface Scope extends RepeatContext {
  readonly given: string;
  readonly now: Temporal.PlainDateTime;
  readonly left: Left;
  readonly time: string | undefined;
}

/** A named day is the next of its kind, however long the step: every other Saturday begins this Saturday. */
function firstTime({ zone, nowMs }: Scope, rule: Rule, fromToday: string): string {
  const search: Rule = rule.every === 'weeks' ? { ...rule, count: 1 } : rule;
  const next = nextAfter(fromToday, zone, search, nowMs);
  if (next === undefined) return fromToday;
  return `${localTime(next.atMs, zone).slice(0, 10)} ${fromToday.slice(11)}`;
}

function hourly(scope: Scope, rule: Rule & { every: 'hours' }, start?: Temporal.PlainDate): Repeat {
  const { now, time, nowMs, zone } = scope;
  if (start === undefined && time === undefined) {
    return done(scope, rule, certain(nowMs + rule.count * 60 * MINUTE_MS, zone));
  }
  return done(scope, rule, `${(start ?? now.toPlainDate()).toString()} ${usual(scope)}`);
}

function once(scope: Scope, started: string | undefined): Repeat {
  const { left, now, time, zone, nowMs, given, field } = scope;
  const rule: Rule = { every: 'once' };
  const soon = take(left, IN);
  if (soon !== undefined) {
    const many = numberOf(soon[1] ?? '');
    const unit = (soon[2] ?? '').toLowerCase();
    if (many < 1 || many > 3660) throw unreadable(field, given);
    if (unit.startsWith('h') || unit.startsWith('mi')) {
      const anchor = certain(nowMs + many * (unit.startsWith('h') ? 60 : 1) * MINUTE_MS, zone);
      return done(scope, rule, anchor);
    }
    const key = unit.startsWith('d')
      ? 'days'
      : unit.startsWith('w')
        ? 'weeks'
        : unit.startsWith('y')
          ? 'years'
          : 'months';
    if (key === 'years' && many > 10) throw unreadable(field, given);
    const day = now.toPlainDate().add({ [key]: many });
    return done(scope, rule, `${day.toString()} ${time ?? minute(now)}`);
  }
  const weekday = started === undefined ? ON_WEEKDAY.exec(left.text) : null;
  const named = started ?? take(left, ON_DAY)?.[1] ?? weekday?.[1] ?? weekday?.[2];
  if (named === undefined && time === undefined) throw unreadable(field, given);
  if (weekday !== null && named === (weekday[1] ?? weekday[2])) left.text = without(left.text, weekday[0]);
  const at = usual(scope);
  const today = now.toPlainDate();
  const day = named === undefined ? today : dayNamed(named, scope, at);
  const waits = named === undefined && instantOf(`${day.toString()} ${at}`, zone) <= nowMs;
  const anchor = `${(waits ? day.add({ days: 1 }) : day).toString()} ${at}`;
  if (instantOf(anchor, zone) > nowMs) return done(scope, rule, anchor);
  throw new Problem('That is already past.', {
    field,
    given,
    limit: `later than ${localTime(nowMs, zone)} (${zone})`,
  });
}

/** The day a rule starts: without a year the nearest one, before or after today. */
function startDay(text: string, scope: Scope): Temporal.PlainDate {
  const today = scope.now.toPlainDate();
  return dayNamed(text, scope, '23:59', today.subtract({ months: 6 }));
}

/** A day in words, at or after `from` where its year is left open. */
function dayNamed(
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

/** The local minute at or after an instant that names it alone: in a doubled hour the second half has no own name. */
function certain(atMs: number, zone: string): string {
  for (let ms = Math.ceil(atMs / MINUTE_MS) * MINUTE_MS; ; ms += MINUTE_MS) {
    const local = localTime(ms, zone);
    if (instantOf(local, zone) >= atMs) return local;
  }
}

function usual({ time, left }: Scope): string {
  if (time === undefined) left.notes.push(`no hour given, taken as ${USUAL_TIME}`);
  return time ?? USUAL_TIME;
}

function minute(now: Temporal.PlainDateTime): string {
  return now.toString({ smallestUnit: 'minute' }).slice(11);
}

function clockTime(said: string, field: string, given: string): string {
  const text = said.toLowerCase();
  const special = { noon: { hour: 12, minute: 0 }, midnight: { hour: 0, minute: 0 } }[text];
  const time = special ?? readClock(text);
  if (time === undefined || time.hour > 23 || time.minute > 59) throw noSuchDate(field, given);
  return `${String(time.hour).padStart(2, '0')}:${String(time.minute).padStart(2, '0')}`;
}

function askBack(given: string, field: string): void {
  for (const [pattern, instead] of DOUBTFUL) {
    if (!pattern.test(given)) continue;
    const choices = instead.map((words) => given.replace(pattern, words));
    throw new Problem('That can mean two things. Which one?', { field, given, choices });
  }
  if (!/\bbetween\b/i.test(given)) return;
  throw new Problem('I can not count "between".', {
    field,
    given,
    hint: 'Name the first day: every other saturday, start 10 jan 2026.',
  });
}

function take(left: Left, pattern: RegExp): readonly string[] | undefined {
  const found = new RegExp(pattern.source, 'i').exec(left.text);
  if (found !== null) left.text = without(left.text, found[0]);
  return found ?? undefined;
}

function without(text: string, words: string): string {
  return text.replace(words, ' ').replace(/\s+/g, ' ').trim();
}

function done({ left, field, given }: Scope, rule: Rule, anchor: string): Repeat {
  if (findPhrase(left.text, field) !== undefined || SECOND.test(left.text)) {
    throw new Problem('That says more than one time.', {
      field,
      given,
      hint: 'One reminder keeps one time; set another for the rest.',
    });
  }
  const rest = left.text
    .replace(/^[\s,;:-]*(?:please )?(?:remind me(?: to| about)? ?)?/i, '')
    .replace(/[\s,;:.-]+$/, '')
    .replace(/ ,/g, ',');
  return { rule, anchor, rest, notes: left.notes };
}

function unreadable(field: string, given: string): Problem {
  return new Problem('I could not read when that should be.', { field, given, hint: EXAMPLES });
}
