import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { MonthDay, Rule, Weekday } from '../../../core/schedule/rule.ts';
import { ruleText } from '../../../core/schedule/say.ts';
import { readRepeat } from '../../../core/words/repeat.ts';

const weekday = fc.integer({ min: 1, max: 7 }).map((day) => day as Weekday);
const monthDay: fc.Arbitrary<MonthDay> = fc.oneof(
  fc.integer({ min: 1, max: 31 }),
  fc.constant('last' as const),
  fc.record({ nth: fc.constantFrom(1, 2, 3, 4, 'last' as const), weekday }) as fc.Arbitrary<MonthDay>,
);
const rule: fc.Arbitrary<Rule> = fc.oneof(
  fc.constant<Rule>({ every: 'once' }),
  fc.record({ every: fc.constant('hours' as const), count: fc.integer({ min: 1, max: 500 }) }),
  fc.record({ every: fc.constant('days' as const), count: fc.integer({ min: 1, max: 400 }) }),
  fc.record({
    every: fc.constant('weeks' as const),
    count: fc.integer({ min: 1, max: 60 }),
    on: fc.uniqueArray(weekday, { minLength: 1 }).map((days) => [...days].sort()),
  }),
  fc.record({ every: fc.constant('months' as const), count: fc.integer({ min: 1, max: 60 }), on: monthDay }),
  fc.record({ every: fc.constant('after' as const), days: fc.integer({ min: 1, max: 400 }) }),
);
const anchor = fc
  .integer({ min: Date.UTC(2026, 0, 4) / 60_000, max: Date.UTC(2029, 0) / 60_000 })
  .map((minutes) => new Date(minutes * 60_000).toISOString().slice(0, 16).replace('T', ' '));

describe('a rule as text', () => {
  it('is read back as the same rule and anchor', () => {
    const context = { field: 'when', nowMs: Date.UTC(2026, 0, 3), zone: 'UTC' };
    fc.assert(
      fc.property(rule, anchor, (one, at) => {
        const text = ruleText(one, at);
        const { rest, rule: back, anchor: from } = readRepeat(text, context);
        expect({ text, rest, rule: back, anchor: from }).toEqual({ text, rest: '', rule: one, anchor: at });
      }),
      { numRuns: 500 },
    );
  });
});
