import { Temporal } from 'temporal-polyfill';
import { localTime } from '../words/when.ts';
import { dateAt } from './repeat.ts';
import type { MonthDay, Rule } from './rule.ts';
import { weekdayNames } from '../weekday.ts';

/** The rule in plain words: "every 2 weeks on Saturday at 09:00", "on the last day of every month at 18:00". */
export function sayRule(rule: Rule, anchor: string): string {
  return `${sayDays(rule, anchor)} at ${anchor.slice(11)}`;
}

/**
 * A rule in the shortest words that `readRepeat` reads back as the same rule and anchor: "every 2 weeks on sat 09:00,
 * start 2026-01-03". For calls that hold a time as text.
 */
export function ruleText(rule: Rule, anchor: string): string {
  const [day = '', time = ''] = anchor.split(' ');
  return rule.every === 'once' ? anchor : `${stepText(rule)} ${time}, start ${day}`;
}

function stepText(rule: Exclude<Rule, { every: 'once' }>): string {
  switch (rule.every) {
    case 'hours':
      return everyCount(rule.count, 'hour');
    case 'days':
      return everyCount(rule.count, 'day');
    case 'weeks':
      return `${everyCount(rule.count, 'week')} on ${rule.on.map((one) => weekdayNames[one - 1]?.slice(0, 3).toLowerCase()).join(', ')}`;
    case 'after':
      return `${rule.days} ${rule.days === 1 ? 'day' : 'days'} after i last did it`;
    case 'months':
      return `${everyCount(rule.count, 'month')} on ${sayMonthDay(rule.on).replace('second', '2nd').replace('third', '3rd')}`;
  }
}

/** An instant by the clock of an IANA zone: "Saturday 2026-01-03 09:00". */
export function sayInstant(atMs: number, zone: string): string {
  const local = localTime(atMs, zone);
  return `${weekdayNames[Temporal.PlainDate.from(local).dayOfWeek - 1]} ${local}`;
}

function sayDays(rule: Rule, anchor: string): string {
  switch (rule.every) {
    case 'once':
      return `once, on ${sayDate(anchor)}`;
    case 'hours':
      return `${everyCount(rule.count, 'hour')}, counted from ${sayDate(anchor)}`;
    case 'days':
      return everyCount(rule.count, 'day');
    case 'weeks':
      return `${everyCount(rule.count, 'week')} on ${joined(rule.on.map((weekday) => weekdayNames[weekday - 1] ?? ''))}`;
    case 'after':
      return `${rule.days} ${rule.days === 1 ? 'day' : 'days'} after you last did it, first on ${sayDate(anchor)}`;
    case 'months':
      return sayMonths(rule.count, rule.on, dateAt(anchor, rule, 0) ?? anchor);
  }
}

function sayMonths(count: number, on: MonthDay, first: string): string {
  const day = sayMonthDay(on);
  if (count === 1) return `on ${day} of every month${shorter(on)}`;
  if (count % 12 !== 0) return `${everyCount(count, 'month')} on ${day}${shorter(on)}`;
  const month = Temporal.PlainDate.from(first).toLocaleString('en-GB', { month: 'long' });
  const leap = on === 29 && month === 'February' ? ' (28 February in other years)' : '';
  return `${everyCount(count / 12, 'year')} on ${typeof on === 'number' ? `${on}` : `${day} of`} ${month}${leap}`;
}

function sayMonthDay(on: MonthDay): string {
  if (on === 'last') return 'the last day';
  if (typeof on === 'number') return `the ${ordinal(on)}`;
  const nth = on.nth === 'last' ? 'last' : ['first', 'second', 'third', 'fourth'][on.nth - 1];
  return `the ${nth} ${weekdayNames[on.weekday - 1]}`;
}

function shorter(on: MonthDay): string {
  return typeof on === 'number' && on > 28 ? ' (the last day of a shorter one)' : '';
}

function ordinal(day: number): string {
  const ending = day > 3 && day < 21 ? undefined : ['st', 'nd', 'rd'][(day % 10) - 1];
  return `${day}${ending ?? 'th'}`;
}

/** "Saturday 3 January 2026". */
function sayDate(local: string): string {
  const date = Temporal.PlainDate.from(local);
  const month = date.toLocaleString('en-GB', { month: 'long' });
  return `${weekdayNames[date.dayOfWeek - 1]} ${date.day} ${month} ${date.year}`;
}

function everyCount(count: number, unit: string): string {
  return count === 1 ? `every ${unit}` : `every ${count} ${unit}s`;
}

function joined(names: readonly string[]): string {
  return names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
}
