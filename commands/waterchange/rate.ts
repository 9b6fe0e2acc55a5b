import { Problem } from '../../core/problem.ts';
import { fixed, toUnit } from '../../core/quantity/format.ts';
import { readQuantity } from '../../core/quantity/read.ts';
import { parameter, type ParameterId } from '../../core/water/parameter.ts';
import { possible } from '../../core/water/possible.ts';
import { readLevel } from './level.ts';

const RATE = /\s*(?:\/|\b(?:per|a|each|every)\b)\s*(day|d|week|wk|month)\s*$/i;
const DAYS: Readonly<Record<string, number>> = { day: 1, d: 1, week: 7, wk: 7, month: 30.4375 };

/** "7 days", "2 weeks", "week" in days; a bare number is days. @throws Problem outside 1 hour to a year. */
export function readEvery(text: string | undefined): number {
  if (text === undefined) return 7;
  const { value } = readQuantity('days', text, { field: 'every', fallback: 'days' });
  if (value >= 1 / 24 && value <= 366) return value;
  throw new Problem('That is no interval for water changes.', {
    field: 'every',
    given: text,
    limit: '1 hour to 1 year',
  });
}

/** "7 days", "1 day", "12 hours". */
export function days(count: number): string {
  if (count < 0.999) return `${fixed(count * 24, 1)} hours`;
  return `${fixed(count, 1)} ${fixed(count, 1) === '1' ? 'day' : 'days'}`;
}

/** Reads "4 ppm a week" or "0.5 ppm per day" (a week where no time is named) as the rise in `everyDays`. */
export function readRise(id: ParameterId, text: string, everyDays: number): number {
  const word = RATE.exec(text)?.[1]?.toLowerCase() ?? 'week';
  const amount = readLevel(id, text.replace(RATE, ''), 'rise');
  const rise = (amount * everyDays) / (DAYS[word] ?? 7);
  const { kind, unit, label } = parameter(id);
  possible(id, 'rise', toUnit(kind, rise, unit));
  if (rise > 0) return rise;
  throw new Problem(`Without a rise ${label} needs no change to hold it.`, {
    field: 'rise',
    given: text,
    limit: 'above 0',
  });
}
