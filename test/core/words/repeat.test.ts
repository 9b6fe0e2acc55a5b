import { describe, expect, it } from 'vitest';
import { Problem } from '../../../core/problem.ts';
import { nextAfter } from '../../../core/schedule/repeat.ts';
import { sayRule } from '../../../core/schedule/say.ts';
import { readRepeat } from '../../../core/words/repeat.ts';
import { localTime } from '../../../core/words/when.ts';
import { problemOf } from '../../commands/text.ts';
import { hostileSample } from '../../hostile.ts';

/** Wednesday 7 January 2026 (ISO 8601 weekday 3), 14:00 in Chicago, which is UTC-6 in winter (IANA tz database). */
const nowMs = Date.parse('2026-01-07T20:00:00Z');
const zone = 'America/Chicago';
const read = (text: string) => readRepeat(text, { field: 'when', nowMs, zone });

describe('readRepeat', () => {
  const table: [string, string, string, string][] = [
    ['every other saturday 9am', 'every 2 weeks on Saturday', '2026-01-10 09:00', ''],
    ['in 3 days', 'once, on Saturday 10 January 2026', '2026-01-10 14:00', ''],
    ['in 3 days at 8am', 'once, on Saturday 10 January 2026', '2026-01-10 08:00', ''],
    ['in 90 minutes', 'once, on Wednesday 7 January 2026', '2026-01-07 15:30', ''],
    ['dip corals tomorrow 7pm', 'once, on Thursday 8 January 2026', '2026-01-08 19:00', 'dip corals'],
    ['on 3 jan', 'once, on Sunday 3 January 2027', '2027-01-03 09:00', ''],
    ['Feed at 9am', 'once, on Thursday 8 January 2026', '2026-01-08 09:00', 'Feed'],
    ['saturday 9am', 'once, on Saturday 10 January 2026', '2026-01-10 09:00', ''],
    ['every 31st', 'on the 31st of every month (the last day of a shorter one)', '2026-01-31 09:00', ''],
    [
      'Test NO3 on the 31st every month',
      'on the 31st of every month (the last day of a shorter one)',
      '2026-01-31 09:00',
      'Test NO3',
    ],
    ['change filter floss every sat', 'every week on Saturday', '2026-01-10 09:00', 'change filter floss'],
    [
      'clean pumps quarterly, start 3 jan 2026',
      'every 3 months on the 3rd',
      '2026-04-03 09:00',
      'clean pumps',
    ],
    [
      'ro filters twice a yr. start 3 jan 2026',
      'every 6 months on the 3rd',
      '2026-07-03 09:00',
      'ro filters',
    ],
    [
      'water change every other sat, start 3 jan 2026',
      'every 2 weeks on Saturday',
      '2026-01-17 09:00',
      'water change',
    ],
    ['every 12 hours', 'every 12 hours, counted from Thursday 8 January 2026', '2026-01-08 02:00', ''],
    ['first monday of the month 8:00', 'on the first Monday of every month', '2026-02-02 08:00', ''],
    ['last day of every month at 18:00', 'on the last day of every month', '2026-01-31 18:00', ''],
    [
      '3 days after I last did it',
      '3 days after you last did it, first on Saturday 10 January 2026',
      '2026-01-10 09:00',
      '',
    ],
    ['daily at 02:30', 'every day', '2026-01-08 02:30', ''],
    ['remind me to check the ATO every day 8pm', 'every day', '2026-01-07 20:00', 'check the ATO'],
    ['every 2 weeks on sat and sun', 'every 2 weeks on Saturday and Sunday', '2026-01-10 09:00', ''],
    ['every mon, wed & fri 7am', 'every week on Monday, Wednesday and Friday', '2026-01-09 07:00', ''],
    ['weekdays 7am', 'every week on Monday, Tuesday, Wednesday, Thursday and Friday', '2026-01-08 07:00', ''],
    ['every 3 months on the 15th', 'every 3 months on the 15th', '2026-01-15 09:00', ''],
    ['twice a week', 'every week on Wednesday and Saturday', '2026-01-10 09:00', ''],
    ['yearly on 29 feb', 'every year on 29 February (28 February in other years)', '2028-02-29 09:00', ''],
    ['dose 5 ml daily 8am', 'every day', '2026-01-08 08:00', 'dose 5 ml'],
    [
      'once a month on the 31st',
      'on the 31st of every month (the last day of a shorter one)',
      '2026-01-31 09:00',
      '',
    ],
    ['next saturday 9am', 'once, on Saturday 10 January 2026', '2026-01-10 09:00', ''],
    ['every 2nd day 3pm', 'every 2 days', '2026-01-07 15:00', ''],
    ['clean on 3 jan every year', 'every year on 3 January', '2027-01-03 09:00', 'clean'],
    [
      'half yearly from 31 mar',
      'every 6 months on the 31st (the last day of a shorter one)',
      '2026-03-31 09:00',
      '',
    ],
  ];
  it.each(table)('%s', (text, words, first, rest) => {
    const { rule, anchor, rest: left } = read(text);
    expect(sayRule(rule, anchor).replace(/ at \d\d:\d\d$/, '')).toBe(words);
    const next = nextAfter(anchor, zone, rule, nowMs);
    expect(next && localTime(next.atMs, zone)).toBe(first);
    expect(left).toBe(rest);
  });

  // Now is Wednesday 2026-01-07 in the test's zone; hours without am or pm are those of the day's first half.
  it.each([
    ['remind me friday 8pm', /20:00$/, ''],
    ['remind me friday 8pm to test alk', /20:00$/, 'to test alk'],
    ['every sat at 9', /09:00$/, ''],
    ['tomorrow at 8 feed', /08:00$/, 'feed'],
    ['tomorrow at eight thirty feed', /08:30$/, 'feed'],
    ['friday evening at 7 top off', /19:00$/, 'top off'],
    ['Feed the Fish tomorrow night', /21:00$/, 'Feed the Fish'],
    ['every morning feed', /09:00$/, 'feed'],
    ['check that alk stays at 8 tomorrow', /09:00$/, 'check that alk stays at 8'],
    ['every two weeks on sunday at nine clean the pump', /09:00$/, 'clean the pump'],
  ])('reads the hour of %s', (text, anchor, rest) => {
    const { anchor: at, rest: left } = read(text);
    expect(at).toMatch(anchor);
    expect(left).toBe(rest);
  });

  it('says what it took for granted', () => {
    expect(read('tomorrow at 8').notes).toEqual(['8 read as 08:00']);

    expect(read('every sat').notes).toEqual(['no hour given, taken as 09:00']);
    expect(read('every sat 9am, start 10 jan').notes).toEqual(['10 jan read as 2026-01-10']);
  });

  it.each([
    ['floss biweekly 9am', ['floss twice a week 9am', 'floss every 2 weeks 9am']],
    ['bimonthly', ['every 2 weeks', 'every 2 months']],
    ['every third sat', ['every 3 weeks on sat', 'third sat of every month']],
  ])('%s is asked back, and each choice can be read', (text, choices) => {
    expect(problemOf(() => read(text)).choices).toEqual(choices);
    for (const choice of choices) expect(read(choice).rule.every).toMatch(/weeks|months/);
  });

  it.each([
    'every other day and every sat',
    'every sat 9am and 5pm',
    'once a week on the 3rd',
    'twice a week on sat',
    'water change',
    '',
    'every 0 days',
    'every 32nd',
    'today 9am',
    '2026-01-03',
    'on 31 apr',
    'every 25:00',
    'daily 25:00',
    'every 9999 hours',
    'trace elements on the saturdays between',
    '5 times a month',
    'every day on the 3rd',
    'in 0 days',
  ])('%j is refused', (text) => expect(problemOf(() => read(text)).field).toBe('when'));

  it('gives examples where it understood nothing', () => {
    expect(problemOf(() => read('soonish')).hint).toMatch(/every other saturday 9am/);
  });

  // America/Chicago falls back on 1 November 2026 at 07:00Z (IANA tz database): 01:45 there comes a second time.
  it('never sets "in 10 minutes" into the past during the doubled hour', () => {
    const later = Date.parse('2026-11-01T07:45:00Z');
    const { anchor, rule } = readRepeat('in 10 minutes', { field: 'when', nowMs: later, zone });
    expect(nextAfter(anchor, zone, rule, later)?.atMs).toBe(Date.parse('2026-11-01T08:00:00Z'));
  });

  it('ends hostile texts in a rule with a next time or a Problem', () => {
    const bad: string[] = [];
    for (const text of hostileSample(5, 3000).flatMap((each) => [each, `${each} every sat`])) {
      try {
        const { anchor, rule } = read(text);
        if (nextAfter(anchor, zone, rule, nowMs) === undefined) bad.push(text);
      } catch (error) {
        if (!(error instanceof Problem)) bad.push(`${text}: ${String(error)}`);
      }
    }
    expect(bad).toEqual([]);
  });
});
