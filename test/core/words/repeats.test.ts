import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Problem } from '../../../core/problem.ts';
import { problemOf } from '../../commands/text.ts';
import { readMoment } from '../../../core/words/moment.ts';
import { readRepeats } from '../../../core/words/repeats.ts';

/** Saturday 3 January 2026, 07:00 UTC. */
const context = { field: 'text', nowMs: Date.UTC(2026, 0, 3, 7), zone: 'UTC' };

function read(text: string) {
  return readRepeats(text, context).map(({ rest, rule, anchor }) => [rest, rule.every, anchor]);
}

describe('several repeats in one text', () => {
  it.each([
    [
      'feed corals every mon, wed and fri, change floss every sat 9am',
      [
        ['feed corals', 'weeks', '2026-01-05 09:00'],
        ['change floss', 'weeks', '2026-01-03 09:00'],
      ],
    ],
    [
      'test alk, ca, mg every sunday; clean glass every 3 days',
      [
        ['test alk, ca, mg', 'weeks', '2026-01-04 09:00'],
        ['clean glass', 'days', '2026-01-03 09:00'],
      ],
    ],
    [
      'floss every sat\npumps quarterly\nstart 5 jan 2026',
      [
        ['floss', 'weeks', '2026-01-05 09:00'],
        ['pumps', 'months', '2026-01-05 09:00'],
      ],
    ],
    [
      'a every sat start 10 jan 2026, b every sat start 17 jan 2026',
      [
        ['a', 'weeks', '2026-01-10 09:00'],
        ['b', 'weeks', '2026-01-17 09:00'],
      ],
    ],
  ])('%j', (text, want) => expect(read(text)).toEqual(want));

  it.each([
    'every sat',
    'floss every sat, glass',
    'a on the saturdays between',
    'floss biweekly, b every sat',
  ])('%j is asked back', (text) => expect(() => read(text)).toThrow(Problem));

  it('asks one part back with choices that keep the others and the start', () => {
    const text = 'floss every sat, glass biweekly, pumps quarterly, start 3 jan 2026';
    const { choices } = problemOf(() => read(text));
    expect(choices).toEqual([
      'floss every sat, glass twice a week, pumps quarterly, start 3 jan 2026',
      'floss every sat, glass every 2 weeks, pumps quarterly, start 3 jan 2026',
    ]);
    for (const choice of choices) expect(read(choice)).toHaveLength(3);
  });

  it('ends hostile texts in a list or a Problem', () => {
    const words = fc.constantFrom(
      'every',
      'sat',
      ',',
      'and',
      'start',
      '3 jan',
      'between',
      'on the saturdays between',
      '31st',
      '9am',
      'floss',
      ';',
      'other',
      '.',
    );
    fc.assert(
      fc.property(fc.array(words, { maxLength: 25 }), (parts) => {
        try {
          expect(read(parts.join(' ')).length).toBeLessThanOrEqual(12);
        } catch (error) {
          expect(error).toBeInstanceOf(Problem);
        }
      }),
      { numRuns: 300 },
    );
  });
});

describe('one moment to come', () => {
  it.each([
    ['in 3 days', Date.UTC(2026, 0, 6, 7)],
    ['2 weeks', Date.UTC(2026, 0, 17, 7)],
    ['until 10 jan', Date.UTC(2026, 0, 10, 9)],
    ['sunday 18:00', Date.UTC(2026, 0, 4, 18)],
    ['tomorrow', Date.UTC(2026, 0, 4, 9)],
    ['now', Date.UTC(2026, 0, 3, 7)],
  ])('%s', (text, atMs) => expect(readMoment(text, context).atMs).toBe(atMs));

  it('takes the usual hour it is given', () => {
    expect(readMoment('10 jan', { ...context, usualTime: '00:00' })).toEqual({
      atMs: Date.UTC(2026, 0, 10),
      notes: ['no hour given, taken as 00:00', '10 jan read as 2026-01-10'],
    });
  });

  it.each(['every saturday', '1 jan 2026', 'tomorrow wobble', ''])('%j is none', (text) =>
    expect(() => readMoment(text, context)).toThrow(Problem),
  );
});
