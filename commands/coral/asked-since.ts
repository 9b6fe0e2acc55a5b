import { Problem } from '../../core/problem.ts';
import { clean } from '../../core/quantity/clean.ts';
import { say } from '../../core/wording/say.ts';
import { askedStarted } from '../tank/asked-started.ts';

/** The ISO day it came: "today", "yesterday", "3 days ago", "2 weeks ago", or a date. @throws Problem for another form. */
export function askedSince(text: string, nowMs: number): string {
  const days = daysAgo(clean(text));
  if (days !== undefined) return new Date(nowMs - days * 86_400_000).toISOString().slice(0, 10);
  try {
    return askedStarted(text, nowMs);
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
    throw new Problem(error.message, {
      field: 'since',
      given: text,
      limit: say('coral.limitDay'),
    });
  }
}

const DAYS = { day: 1, week: 7, month: 30.4375, year: 365.25 } as const;

function daysAgo(text: string): number | undefined {
  if (/^(?:today|now|just now|new)$/.test(text)) return 0;
  if (text === 'yesterday') return 1;
  const found = /^(\d{1,3}|an?|one) (day|week|month|year)s?(?: ago)?$/.exec(text);
  if (found === null) return undefined;
  const [, count = '', unit = 'day'] = found;
  return (/\d/.test(count) ? Number(count) : 1) * DAYS[unit as keyof typeof DAYS];
}
