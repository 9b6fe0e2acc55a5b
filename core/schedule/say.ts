import { Temporal } from 'temporal-polyfill';
import { dateAt } from './repeat.ts';
import type { MonthDay, Rule } from './rule.ts';
import { weekdayNames } from './weekday.ts';

/** The rule in plain words: "every 2 weeks on Saturday at 09:00", "on the last day of every month at 18:00". */
export function sayRule(rule: Rule, anchor: string): string {
  return `${sayDays(rule, anchor)} at ${anchor.slice(11)}`;
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
