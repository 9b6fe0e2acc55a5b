import { Temporal } from 'temporal-polyfill';
import { inRange, Problem } from '../problem.ts';
import type { MonthDay, Nth, Rule } from './rule.ts';
import { WEEKDAY, WEEKDAYS, weekdayOf, weekdaysOf } from '../weekday.ts';
import { say } from '../wording/say.ts';

/** What a phrase says: the rule once the day it starts on is known. */
export type Plan = (start: Temporal.PlainDate) => Rule;

/** A phrase found in a text: the words it took up and its meaning. */
export interface Phrase {
  readonly words: string;
  readonly plan: Plan;
}

const NUMBERS = [
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'ten',
  'eleven',
  'twelve',
];
export const NUMBER = String.raw`\d{1,4}|an?|${NUMBERS.join('|')}`;
const UNIT = String.raw`half[ -]years?|hours?|hrs?|h|days?|weeks?|wks?|fortnights?|months?|quarters?|years?|yrs?`;
const DAY_OF_MONTH = String.raw`(?:the )?(?:last day|(?:first|1st|second|2nd|third|3rd|fourth|4th|last) ${WEEKDAY}|\d{1,2}(?:st|nd|rd|th))`;
const ADVERBS: Readonly<Record<string, readonly [number, string]>> = {
  hourly: [1, 'hour'],
  daily: [1, 'day'],
  weekly: [1, 'week'],
  fortnightly: [2, 'week'],
  monthly: [1, 'month'],
  quarterly: [3, 'month'],
  'half-yearly': [6, 'month'],
  yearly: [1, 'year'],
  annually: [1, 'year'],
};

/** Longest steps taken, in their own unit: ten years, or a year of hours. */
const LONGEST: Readonly<Record<string, number>> = { hour: 8784, day: 3660, week: 520, month: 120, year: 10 };

const ON = String.raw`(?:,? (?:on )?(${WEEKDAYS}|${DAY_OF_MONTH}))?`;
const DONE = String.raw`(?:i (?:last )?(?:did|do|have done) (?:it|this|that)|(?:it was |it is |it's )?(?:last )?done|doing (?:it|this|that)|the last (?:time|one))`;

type Reader = (found: readonly string[], field: string) => Plan;

/** Tried in this order; each is looked for anywhere in the text. */
const PHRASES: readonly (readonly [string, Reader])[] = [
  [
    String.raw`(?:every )?(${NUMBER}) (days?|weeks?|wks?) after ${DONE}`,
    ([, many = '', unit = ''], field) => {
      const { count } = step(field, many, unit);
      return () => ({ every: 'after', days: unit.toLowerCase().startsWith('w') ? count * 7 : count });
    },
  ],
  [
    String.raw`(?:every |on )?(${DAY_OF_MONTH}),? (?:of |in )?(?:(?:the|a|per|each|every)(?: (${NUMBER}))? )months?`,
    ([, day = '', many = 'one'], field) => months(step(field, many, 'month').count, dayOfMonth(field, day)),
  ],
  [
    String.raw`(?:every |each )((?:first|1st|last) ${WEEKDAY}|last day)`,
    ([, day = ''], field) => months(1, dayOfMonth(field, day)),
  ],
  [
    String.raw`(?:every|each) (?:(other|second|2nd|${NUMBER}) )?(${UNIT})${ON}`,
    ([, many = 'one', unit = '', on = ''], field) => stepped(field, many, unit, on),
  ],
  [
    String.raw`(${Object.keys(ADVERBS).join('|')}|half yearly)${ON}`,
    ([, adverb = '', on = ''], field) => {
      const [count, unit] = ADVERBS[adverb.toLowerCase().replace(' ', '-')] ?? [1, 'day'];
      return stepped(field, String(count), unit, on);
    },
  ],
  [
    String.raw`(?:every|each) (\d{1,2}(?:st|nd|rd|th))`,
    ([, day = ''], field) => months(1, dayOfMonth(field, day)),
  ],
  [
    String.raw`(?:every|each) (other )?(${WEEKDAYS})`,
    ([, other = '', on = '']) => weeks(other === '' ? 1 : 2, on),
  ],
  [
    String.raw`(?:on )?((?:mon|tues|wednes|thurs|fri|satur|sun)days|weekdays|weekends)`,
    ([, on = '']) => weeks(1, on),
  ],
  [
    String.raw`(once|twice|(?:${NUMBER}) times) (?:a|an|per|each|every) (day|week|month|year|yr)${ON}`,
    ([, often = '', unit = '', on = ''], field) => perUnit(field, often, unit, on),
  ],
];
const COMPILED = PHRASES.map(
  ([source, reader]) => [new RegExp(String.raw`(?<![\w-])(?:${source})(?![\w-])`, 'i'), reader] as const,
);

/** The first phrase of a repeat in the text, or undefined. @throws Problem for a count or day out of range. */
export function findPhrase(text: string, field: string): Phrase | undefined {
  for (const [pattern, reader] of COMPILED) {
    const found = pattern.exec(text);
    if (found !== null) return { words: found[0], plan: reader(found, field) };
  }
  return undefined;
}

/** "3", "a", "twelve". */
export function numberOf(text: string): number {
  const word = text.toLowerCase();
  if (/^\d/.test(word)) return Number(word);
  return /^an?$/.test(word) ? 1 : NUMBERS.indexOf(word) + 1;
}

/** The count and unit of one step; quarters, fortnights and years in months and weeks. */
function step(
  field: string,
  many: string,
  unitText: string,
): { readonly count: number; readonly unit: string } {
  const text = unitText.toLowerCase();
  const count = /^(?:other|second|2nd)$/i.test(many) ? 2 : numberOf(many);
  if (text.startsWith('half')) return { count: 6 * ranged(field, count, 'year'), unit: 'month' };
  if (text.startsWith('q')) return { count: 3 * ranged(field, count, 'year'), unit: 'month' };
  if (text.startsWith('f')) return { count: 2 * ranged(field, count, 'year'), unit: 'week' };
  if (text.startsWith('y')) return { count: 12 * ranged(field, count, 'year'), unit: 'month' };
  const unit = { h: 'hour', d: 'day', w: 'week', m: 'month' }[text.slice(0, 1)] ?? 'day';
  return { count: ranged(field, count, unit), unit };
}

function ranged(field: string, count: number, unit: string): number {
  return inRange(field, count, 1, LONGEST[unit] ?? 1, `${unit}s`);
}

function stepped(field: string, many: string, unitText: string, on: string): Plan {
  const { count, unit } = step(field, many, unitText);
  const named = new RegExp(`^${WEEKDAYS}$`, 'i').test(on);
  if (on !== '' && (unit === 'hour' || unit === 'day' || (unit === 'week') !== named)) {
    throw new Problem(say('schedule.notTogether'), {
      field,
      given: `${unitText} ${on}`,
      hint: say('schedule.hintTogether'),
    });
  }
  if (unit === 'hour') return () => ({ every: 'hours', count });
  if (unit === 'day') return () => ({ every: 'days', count });
  if (unit === 'week') return on === '' ? ownWeekday(count) : weeks(count, on);
  return on === ''
    ? (start) => ({ every: 'months', count, on: start.day })
    : months(count, dayOfMonth(field, on));
}

function weeks(count: number, on: string): Plan {
  return () => ({ every: 'weeks', count, on: weekdaysOf(on) });
}

function ownWeekday(count: number): Plan {
  return (start) => ({
    every: 'weeks',
    count,
    on: weekdaysOf(start.toLocaleString('en-GB', { weekday: 'long' })),
  });
}

function months(count: number, on: MonthDay): Plan {
  return () => ({ every: 'months', count, on });
}

function dayOfMonth(field: string, text: string): MonthDay {
  const day = text.toLowerCase().replace(/^the /, '');
  if (day === 'last day') return 'last';
  const [first = '', weekday] = day.split(' ');
  if (weekday === undefined) return inRange(field, Number.parseInt(first, 10), 1, 31, '');
  const nth = { f: 1, '1': 1, s: 2, '2': 2, t: 3, '3': 3, '4': 4, l: 'last' }[first.slice(0, 1)];
  return { nth: first === 'fourth' ? 4 : ((nth ?? 1) as Nth), weekday: weekdayOf(weekday) };
}

/** "twice a week" is the starting day and three days on; a day is shared in elapsed hours, a year in months. */
function perUnit(field: string, often: string, unitText: string, on: string): Plan {
  const word = often.toLowerCase();
  const times = word === 'once' ? 1 : word === 'twice' ? 2 : numberOf(word.replace(/ times$/, ''));
  const unit = unitText.toLowerCase();
  if (times === 1) return stepped(field, 'one', unit, on);
  if (on === '' && unit === 'day' && 24 % times === 0) return () => ({ every: 'hours', count: 24 / times });
  if (on === '' && unit.startsWith('y') && 12 % times === 0)
    return stepped(field, String(12 / times), 'month', '');
  if (on === '' && unit === 'week' && times === 2) {
    return (start) => {
      const days = [start, start.add({ days: 3 })].map((day) =>
        day.toLocaleString('en-GB', { weekday: 'long' }),
      );
      return { every: 'weeks', count: 1, on: weekdaysOf(days.join(' and ')) };
    };
  }
  throw new Problem(say('schedule.noEvenShare'), {
    field,
    given: `${often} a ${unitText} ${on}`.trim(),
    hint: say('schedule.hintEvenShare'),
  });
}
