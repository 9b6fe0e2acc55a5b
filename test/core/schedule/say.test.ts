import { describe, expect, it } from 'vitest';
import type { Rule } from '../../../core/schedule/rule.ts';
import { sayRule } from '../../../core/schedule/say.ts';

const table: [Rule, string, string][] = [
  [{ every: 'once' }, '2026-01-03 09:00', 'once, on Saturday 3 January 2026 at 09:00'],
  [{ every: 'weeks', count: 2, on: [6] }, '2026-01-03 09:00', 'every 2 weeks on Saturday at 09:00'],
  [
    { every: 'weeks', count: 1, on: [1, 3, 5] },
    '2026-01-03 09:00',
    'every week on Monday, Wednesday and Friday at 09:00',
  ],
  [{ every: 'days', count: 1 }, '2026-01-03 02:30', 'every day at 02:30'],
  [
    { every: 'hours', count: 12 },
    '2026-01-03 08:00',
    'every 12 hours, counted from Saturday 3 January 2026 at 08:00',
  ],
  [{ every: 'months', count: 1, on: 'last' }, '2026-01-03 18:00', 'on the last day of every month at 18:00'],
  [
    { every: 'months', count: 1, on: 31 },
    '2026-01-31 09:00',
    'on the 31st of every month (the last day of a shorter one) at 09:00',
  ],
  [{ every: 'months', count: 3, on: 12 }, '2026-01-12 09:00', 'every 3 months on the 12th at 09:00'],
  [
    { every: 'months', count: 1, on: { nth: 1, weekday: 1 } },
    '2026-01-03 08:00',
    'on the first Monday of every month at 08:00',
  ],
  [
    { every: 'months', count: 12, on: 29 },
    '2028-02-29 09:00',
    'every year on 29 February (28 February in other years) at 09:00',
  ],
  [
    { every: 'months', count: 12, on: { nth: 'last', weekday: 7 } },
    '2026-03-01 09:00',
    'every year on the last Sunday of March at 09:00',
  ],
  [
    { every: 'after', days: 3 },
    '2026-01-03 09:00',
    '3 days after you last did it, first on Saturday 3 January 2026 at 09:00',
  ],
];

describe('sayRule', () => {
  it.each(table)('%o', (rule, anchor, words) => expect(sayRule(rule, anchor)).toBe(words));
});
