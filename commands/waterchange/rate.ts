import { Problem } from '../../core/problem.ts';
import { fixed, toUnit } from '../../core/quantity/format.ts';
import { readQuantity } from '../../core/quantity/read.ts';
import { parameter, type ParameterId } from '../../core/water/parameter.ts';
import { possible } from '../../core/water/possible.ts';
import { readLevel } from './level.ts';
import { say } from '../../core/wording/say.ts';

const RATE =
  /\s*(?:\/|\b(?:per|an?|each|every|in|over)\b)\s*(?:(?<count>\d{1,4}(?:\.\d{1,3})?)\s*)?(?<unit>hour|h|day|d|week|wk|month)s?\s*$/i;
const DAYS: Readonly<Record<string, number>> = {
  h: 1 / 24,
  hour: 1 / 24,
  d: 1,
  day: 1,
  wk: 7,
  week: 7,
  month: 30.4375,
};

/** "4 ppm a week", "0.9 dKH in 3 days", "2 L/day": the amount alone, and the days it was said for. */
export function splitRate(text: string): { readonly amount: string; readonly everyDays: number | undefined } {
  const found = RATE.exec(text);
  const { count = '1', unit = '' } = found?.groups ?? {};
  const everyDays = Number(count) * (DAYS[unit.toLowerCase()] ?? 0);
  if (found === null || everyDays <= 0) return { amount: text, everyDays: undefined };
  return { amount: text.slice(0, found.index), everyDays };
}

/** Reads how much of a parameter comes or goes in a day, canonical; a day where no time is named. @throws Problem */
export function readPerDay(
  id: ParameterId,
  text: string,
  field: string,
): { perDay: number; notes: readonly string[] } {
  const { kind, unit, label } = parameter(id);
  const { amount, everyDays } = splitRate(text);
  const { value, notes } = readQuantity(kind, amount, { field, fallback: unit });
  const perDay = value / (everyDays ?? 1);
  possible(id, field, toUnit(kind, perDay, unit));
  if (perDay <= 0)
    throw new Problem(say('change.howMuchDay', { label }), {
      field,
      given: text,
      limit: say('change.above0'),
    });
  return { perDay, notes: everyDays === undefined ? [...notes, `${field} taken as that much a day`] : notes };
}

/** "7 days", "2 weeks", "week" in days; a bare number is days. @throws Problem outside 1 hour to a year. */
export function readEvery(text: string | undefined): number {
  if (text === undefined) return 7;
  const { value } = readQuantity('days', text, { field: 'every', fallback: 'days' });
  if (value >= 1 / 24 && value <= 366) return value;
  throw new Problem(say('change.noIntervalWaterChanges'), {
    field: 'every',
    given: text,
    limit: say('change.limitInterval'),
  });
}

/** "7 days", "1 day", "12 hours". */
export function days(count: number): string {
  if (count < 0.999) return `${fixed(count * 24, 1)} hours`;
  return `${fixed(count, 1)} ${fixed(count, 1) === '1' ? 'day' : 'days'}`;
}

/** Reads "4 ppm a week" or "0.5 ppm per day" (a week where no time is named) as the rise in `everyDays`. */
export function readRise(id: ParameterId, text: string, everyDays: number): number {
  const said = splitRate(text);
  const rise = (readLevel(id, said.amount, 'rise') * everyDays) / (said.everyDays ?? 7);
  const { kind, unit, label } = parameter(id);
  possible(id, 'rise', toUnit(kind, rise, unit));
  if (rise > 0) return rise;
  throw new Problem(say('change.withoutRiseNeedsNo', { label }), {
    field: 'rise',
    given: text,
    limit: say('change.above0'),
  });
}
