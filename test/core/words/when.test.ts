import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Problem } from '../../../core/problem.ts';
import { localTime, readWhen } from '../../../core/words/when.ts';
import { problemOf } from '../../commands/text.ts';
import { hostileSample } from '../../hostile.ts';

/** Wednesday 7 January 2026 (ISO 8601 weekday 3), 14:00 in Chicago, which is UTC-6 in winter (IANA tz database). */
const nowMs = Date.parse('2026-01-07T20:00:00Z');
const zone = 'America/Chicago';
const read = (text: string | undefined) => readWhen(text, { field: 'at', nowMs, zone });

describe('readWhen', () => {
  const table: [string | undefined, string][] = [
    [undefined, '2026-01-07 14:00'],
    ['now', '2026-01-07 14:00'],
    ['today', '2026-01-07 14:00'],
    ['today 9am', '2026-01-07 09:00'],
    ['yesterday 7pm', '2026-01-06 19:00'],
    ['7 pm yesterday', '2026-01-06 19:00'],
    ['yesterday', '2026-01-06 12:00'],
    ['9am', '2026-01-07 09:00'],
    ['noon', '2026-01-07 12:00'],
    ['12 am', '2026-01-07 00:00'],
    ['2 hours ago', '2026-01-07 12:00'],
    ['an hour ago', '2026-01-07 13:00'],
    ['1,5 hours ago', '2026-01-07 12:30'],
    ['90 min ago', '2026-01-07 12:30'],
    ['3 days ago', '2026-01-04 14:00'],
    ['2 weeks ago', '2025-12-24 14:00'],
    ['monday 9am', '2026-01-05 09:00'],
    ['on Sunday, 10:30', '2026-01-04 10:30'],
    ['wed 9am', '2026-01-07 09:00'],
    ['wednesday 11pm', '2025-12-31 23:00'],
    ['last wednesday', '2025-12-31 12:00'],
    ['2026-01-03 18:00', '2026-01-03 18:00'],
    ['2026-01-03', '2026-01-03 12:00'],
    ['3 Jan 18:00', '2026-01-03 18:00'],
    ['Jan 3rd 6 pm', '2026-01-03 18:00'],
    ['3 Jan 2026', '2026-01-03 12:00'],
    ['3 Dec 2025 at 8:15pm', '2025-12-03 20:15'],
    ['2026-01-03T18:00:00Z', '2026-01-03 12:00'],
    ['2026-01-03T18:00+02:00', '2026-01-03 10:00'],
    // Hours of parts of the day: common practice, no source; each is said in the notes.
    ['this morning', '2026-01-07 09:00'],
    ['at 8 this morning', '2026-01-07 08:00'],
    ['last night', '2026-01-06 21:00'],
    ['last night at 10', '2026-01-06 22:00'],
    ['yesterday evening', '2026-01-06 19:00'],
    ['tonight', '2026-01-07 14:00'],
    ['monday morning', '2026-01-05 09:00'],
    ['yesterday at eight', '2026-01-06 08:00'],
    ['at 1', '2026-01-07 13:00'],
    ['half an hour ago', '2026-01-07 13:30'],
    ['a couple of days ago', '2026-01-05 14:00'],
    ['a week ago', '2025-12-31 14:00'],
    ['two months ago', '2025-11-07 14:00'],
    ['last week', '2025-12-31 14:00'],
    ['the day before yesterday', '2026-01-05 12:00'],
  ];
  it.each(table)('%s is %s by the clock of Chicago', (text, local) => {
    expect(localTime(read(text).atMs, zone)).toBe(local);
  });

  it('says what it took for granted', () => {
    expect(read('yesterday').notes).toEqual(['no hour given, taken as 12:00']);
    expect(read('monday 9am').notes).toEqual(['monday read as 2026-01-05']);
    expect(read('3 Jan 18:00').notes).toEqual(['3 jan read as 2026-01-03']);
    expect(read('2026-01-03 18:00').notes).toEqual([]);
  });

  it.each([
    ['7pm', ['yesterday 7pm']],
    ['3 dec', ['2025-12-03']],
    ['3 dec 18:00', ['2025-12-03 18:00']],
    ['today 7pm', []],
    ['2027-01-01', []],
  ])('%s lies in the future', (text, choices) => {
    const problem = problemOf(() => read(text));
    expect(problem.message).toBe('That is in the future.');
    expect(problem.choices).toEqual(choices);
    for (const choice of choices) expect(read(choice).atMs).toBeLessThan(nowMs);
  });

  it.each(['4/5', '4/5 18:00', '15.4.2025', '03-01-2026'])('%s is refused with a hint', (text) => {
    expect(problemOf(() => read(text)).hint).toMatch(/year-month-day/);
  });

  it.each([
    'tomorrow',
    'a few hours ago',
    '25:00',
    '13pm',
    '2026-02-30',
    '31 Apr 2025',
    '1.5 days ago',
    '1999-12-31',
    'x',
    '2026-01-03T25:00Z',
  ])('%s is no time', (text) => expect(problemOf(() => read(text)).field).toBe('at'));

  // US clocks: forward 8 March 2026 at 2:00, back 1 November 2026 at 2:00 (IANA tz database, America/Chicago).
  it('moves a skipped time forward and takes the first of a doubled one', () => {
    const later = { field: 'at', nowMs: Date.parse('2026-12-01T00:00:00Z'), zone };
    expect(readWhen('2026-03-08 02:30', later).atMs).toBe(Date.parse('2026-03-08T08:30:00Z'));
    expect(readWhen('2026-11-01 01:30', later).atMs).toBe(Date.parse('2026-11-01T06:30:00Z'));
  });

  it('counts days by the calendar, hours by the clock', () => {
    const afterSpring = { field: 'at', nowMs: Date.parse('2026-03-08T18:00:00Z'), zone };
    expect(readWhen('1 day ago', afterSpring).atMs).toBe(Date.parse('2026-03-07T19:00:00Z'));
    expect(readWhen('24 hours ago', afterSpring).atMs).toBe(Date.parse('2026-03-07T18:00:00Z'));
  });

  it('reads back what it prints, to the minute', () => {
    fc.assert(
      fc.property(fc.integer({ min: Date.UTC(2000, 0, 2), max: nowMs }), (atMs) => {
        const minute = Math.floor(atMs / 60_000) * 60_000;
        expect(readWhen(localTime(minute), { field: 'at', nowMs }).atMs).toBe(minute);
      }),
    );
  });

  it('ends hostile texts in a moment of the past or a Problem', () => {
    const bad: string[] = [];
    for (const text of hostileSample(4, 4000)) {
      try {
        const { atMs } = read(text);
        if (!(atMs >= Date.UTC(2000, 0, 1) && atMs <= nowMs)) bad.push(text);
      } catch (error) {
        if (!(error instanceof Problem)) bad.push(`${text}: ${String(error)}`);
      }
    }
    expect(bad).toEqual([]);
  });
});
