import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anchorAfter, dateAt, nextAfter, occurrence } from '../../../core/schedule/repeat.ts';
import type { MonthDay, Nth, Rule, Weekday } from '../../../core/schedule/rule.ts';
import { localTime } from '../../../core/words/when.ts';

/** Local times of the first `count`, walked with `nextAfter`. */
function walk(anchor: string, rule: Rule, count: number, zone = 'America/Chicago'): string[] {
  const times: string[] = [];
  let after = -Infinity;
  while (times.length < count) {
    const next = nextAfter(anchor, zone, rule, after);
    if (next === undefined) break;
    times.push(localTime(next.atMs, zone));
    after = next.atMs;
  }
  return times;
}
const dates = (anchor: string, rule: Rule, count: number) =>
  walk(anchor, rule, count).map((at) => at.slice(0, 10));

describe('several cadences from Saturday 3 January 2026 (Gregorian calendar, ISO 8601 weekdays)', () => {
  const start = '2026-01-03 09:00';
  const table: [string, string, Rule, string[]][] = [
    [
      'weekly',
      start,
      { every: 'weeks', count: 1, on: [6] },
      ['2026-01-03', '2026-01-10', '2026-01-17', '2026-01-24'],
    ],
    [
      'every other',
      start,
      { every: 'weeks', count: 2, on: [6] },
      ['2026-01-03', '2026-01-17', '2026-01-31', '2026-02-14'],
    ],
    [
      'those between',
      '2026-01-10 09:00',
      { every: 'weeks', count: 2, on: [6] },
      ['2026-01-10', '2026-01-24', '2026-02-07'],
    ],
    [
      '31st',
      start,
      { every: 'months', count: 1, on: 31 },
      ['2026-01-31', '2026-02-28', '2026-03-31', '2026-04-30'],
    ],
    [
      'quarterly',
      start,
      { every: 'months', count: 3, on: 3 },
      ['2026-01-03', '2026-04-03', '2026-07-03', '2026-10-03'],
    ],
    ['twice a year', start, { every: 'months', count: 6, on: 3 }, ['2026-01-03', '2026-07-03', '2027-01-03']],
    [
      'last day',
      '2028-01-31 18:00',
      { every: 'months', count: 1, on: 'last' },
      ['2028-01-31', '2028-02-29', '2028-03-31'],
    ],
    [
      '29 February',
      '2028-02-29 09:00',
      { every: 'months', count: 12, on: 29 },
      ['2028-02-29', '2029-02-28', '2030-02-28', '2031-02-28', '2032-02-29'],
    ],
    [
      'first Monday',
      start,
      { every: 'months', count: 1, on: { nth: 1, weekday: 1 } },
      ['2026-01-05', '2026-02-02', '2026-03-02'],
    ],
    [
      'last Friday',
      start,
      { every: 'months', count: 1, on: { nth: 'last', weekday: 5 } },
      ['2026-01-30', '2026-02-27', '2026-03-27'],
    ],
    [
      'Monday and Thursday',
      start,
      { every: 'weeks', count: 2, on: [1, 4] },
      ['2026-01-05', '2026-01-08', '2026-01-19', '2026-01-22'],
    ],
    ['a day already past', start, { every: 'months', count: 1, on: 1 }, ['2026-02-01', '2026-03-01']],
    ['every 3 days', start, { every: 'days', count: 3 }, ['2026-01-03', '2026-01-06', '2026-01-09']],
  ];
  it.each(table)('%s', (_name, anchor, rule, expected) => {
    expect(dates(anchor, rule, expected.length)).toEqual(expected);
  });

  it('has two tasks on 31 January, neither lost', () => {
    const after = Date.parse('2026-01-31T06:00:00Z');
    const both = [table[1], table[3]].map(
      (row) => row && nextAfter(row[1], 'America/Chicago', row[2], after),
    );
    expect(both.map((next) => next && localTime(next.atMs, 'America/Chicago'))).toEqual([
      '2026-01-31 09:00',
      '2026-01-31 09:00',
    ]);
  });
});

describe('clock changes (IANA tz database, America/Chicago: 8 March and 1 November 2026)', () => {
  const daily: Rule = { every: 'days', count: 1 };
  it('02:30 in the gap fires once, moved forward', () => {
    const expected = ['2026-03-07 02:30', '2026-03-08 03:30', '2026-03-09 02:30'];
    expect(walk('2026-03-07 02:30', daily, 3)).toEqual(expected);
    expect(occurrence('2026-03-07 02:30', 'America/Chicago', daily, 1)).toBe(
      Date.parse('2026-03-08T08:30:00Z'),
    );
  });
  it('01:30 in the doubled hour fires once, the first', () => {
    expect(walk('2026-10-31 01:30', daily, 3)).toEqual([
      '2026-10-31 01:30',
      '2026-11-01 01:30',
      '2026-11-02 01:30',
    ]);
    expect(occurrence('2026-10-31 01:30', 'America/Chicago', daily, 1)).toBe(
      Date.parse('2026-11-01T06:30:00Z'),
    );
  });
  it('every 24 hours is elapsed time and moves on the clock', () => {
    const rule: Rule = { every: 'hours', count: 24 };
    expect(walk('2026-03-07 02:30', rule, 3)).toEqual([
      '2026-03-07 02:30',
      '2026-03-08 03:30',
      '2026-03-09 03:30',
    ]);
  });
  it('a day that a zone skipped gives one, not two on one instant (Pacific/Apia, 30 December 2011)', () => {
    const expected = ['2011-12-29 09:00', '2011-12-31 09:00', '2012-01-01 09:00'];
    expect(walk('2011-12-29 09:00', daily, 3, 'Pacific/Apia')).toEqual(expected);
  });
});

describe('once and after', () => {
  it.each<Rule>([{ every: 'once' }, { every: 'after', days: 3 }])('%o fires once', (rule) => {
    expect(walk('2026-01-03 09:00', rule, 5)).toEqual(['2026-01-03 09:00']);
  });
  it('counts from the local day it was done, by the calendar', () => {
    // 03:00Z on 8 March is still 7 March in Chicago.
    const done = Date.parse('2026-03-08T03:00:00Z');
    expect(anchorAfter('2026-01-03 09:00', 'America/Chicago', 3, done)).toBe('2026-03-10 09:00');
  });
});

const rules: fc.Arbitrary<Rule> = fc.oneof(
  fc.record({ every: fc.constant('hours' as const), count: fc.integer({ min: 1, max: 200 }) }),
  fc.record({ every: fc.constant('days' as const), count: fc.integer({ min: 1, max: 400 }) }),
  fc.record({
    every: fc.constant('weeks' as const),
    count: fc.integer({ min: 1, max: 60 }),
    on: fc.uniqueArray(fc.constantFrom(1, 2, 3, 4, 5, 6, 7), { minLength: 1 }),
  }),
  fc.record({
    every: fc.constant('months' as const),
    count: fc.integer({ min: 1, max: 24 }),
    on: fc.oneof<fc.Arbitrary<MonthDay>[]>(
      fc.integer({ min: 1, max: 31 }),
      fc.constant('last' as const),
      fc.record({
        nth: fc.constantFrom<Nth[]>(1, 2, 3, 4, 'last'),
        weekday: fc.constantFrom<Weekday[]>(1, 2, 3, 4, 5, 6, 7),
      }),
    ),
  }),
);
const zones = fc.constantFrom(
  'UTC',
  'America/Chicago',
  'Pacific/Chatham',
  'Australia/Lord_Howe',
  'Africa/Cairo',
);
const minutes = fc.integer({ min: 0, max: 365 * 24 * 60 * 3 }).map((n) => Date.UTC(2025, 0) + n * 60_000);

describe('nextAfter', () => {
  it('is the smallest occurrence later than the moment, anywhere in 97 years', () => {
    fc.assert(
      fc.property(
        rules,
        zones,
        minutes,
        fc.integer({ min: 0, max: 97 * 365 * 24 * 60 }),
        (rule, zone, from, ahead) => {
          const anchor = localTime(from, zone);
          const after = from + ahead * 60_000;
          const next = nextAfter(anchor, zone, rule, after);
          if (next === undefined) throw new Error('none');
          expect(next.atMs).toBeGreaterThan(after);
          expect(occurrence(anchor, zone, rule, next.index)).toBe(next.atMs);
          if (next.index > 0) {
            expect(occurrence(anchor, zone, rule, next.index - 1)).toBeLessThanOrEqual(after);
          }
          const following = nextAfter(anchor, zone, rule, next.atMs);
          if (following !== undefined) expect(following.index).toBe(next.index + 1);
        },
      ),
      { numRuns: 500 },
    );
  });

  it('ends a hundred years on', () => {
    const rule: Rule = { every: 'months', count: 1, on: 31 };
    expect(nextAfter('2026-01-31 09:00', 'UTC', rule, Date.UTC(2125, 10, 30))?.atMs).toBe(
      Date.UTC(2125, 10, 30, 9),
    );
    expect(nextAfter('2026-01-31 09:00', 'UTC', rule, Date.UTC(2126, 1, 1))).toBeUndefined();
    expect(occurrence('2026-01-31 09:00', 'UTC', rule, Number.MAX_SAFE_INTEGER)).toBeUndefined();
    expect(occurrence('2026-01-31 09:00', 'UTC', rule, -1)).toBeUndefined();
    expect(dateAt('2026-01-31 09:00', rule, 1)).toBe('2026-02-28');
  });
});
