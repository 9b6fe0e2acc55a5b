import ICAL from 'ical.js';
import { describe, expect, it } from 'vitest';
import { calendarText, type CalendarEntry } from '../../../core/schedule/ical.ts';
import { zoneBlock } from '../../../core/schedule/ical-zone.ts';
import { nextAfter } from '../../../core/schedule/repeat.ts';
import type { Rule } from '../../../core/schedule/rule.ts';
import { instantOf } from '../../../core/schedule/zone.ts';
import { localTime } from '../../../core/words/when.ts';

const NOW_MS = Date.UTC(2026, 0, 3, 7);
const YEAR_MS = 366 * 86_400_000;

const rules: Readonly<Record<string, Rule>> = {
  'every 12 hours': { every: 'hours', count: 12 },
  'every day': { every: 'days', count: 1 },
  'every 3 days': { every: 'days', count: 3 },
  'every Saturday': { every: 'weeks', count: 1, on: [6] },
  'every 2 weeks on Monday and Saturday': { every: 'weeks', count: 2, on: [1, 6] },
  'every 3 weeks on Sunday, Wednesday and Friday': { every: 'weeks', count: 3, on: [3, 5, 7] },
  'the 15th': { every: 'months', count: 1, on: 15 },
  'the 29th': { every: 'months', count: 1, on: 29 },
  'the 30th, every 2 months': { every: 'months', count: 2, on: 30 },
  'the 31st': { every: 'months', count: 1, on: 31 },
  'quarterly on the 31st': { every: 'months', count: 3, on: 31 },
  'the last day': { every: 'months', count: 1, on: 'last' },
  'the first Saturday': { every: 'months', count: 1, on: { nth: 1, weekday: 6 } },
  'the last Friday, half-yearly': { every: 'months', count: 6, on: { nth: 'last', weekday: 5 } },
  yearly: { every: 'months', count: 12, on: 3 },
  once: { every: 'once' },
};
/** With both clock changes, half-hour offsets, the southern hemisphere, none, and two that no yearly rule can say. */
const zones = [
  'Europe/Berlin',
  'America/Chicago',
  'America/St_Johns',
  'Australia/Lord_Howe',
  'Asia/Kolkata',
  'UTC',
  'Africa/Casablanca',
  'Asia/Jerusalem',
] as const;
const anchors = ['2026-01-03 09:00', '2025-11-27 18:30'];

function entry(rule: Rule, zone: string, anchor: string, more: Partial<CalendarEntry> = {}): CalendarEntry {
  return {
    uid: 'reminder-1@sumpside.invalid',
    summary: 'floss',
    anchor,
    zone,
    rule,
    fromMs: NOW_MS,
    ...more,
  };
}

/** The instants another parser reads out of a calendar within a year, each with its summary. */
function readBack(text: string): readonly number[] {
  const calendar = new ICAL.Component(ICAL.parse(text) as unknown as string);
  ICAL.TimezoneService.reset();
  for (const zone of calendar.getAllSubcomponents('vtimezone')) ICAL.TimezoneService.register(zone);
  return calendar.getAllSubcomponents('vevent').flatMap((component) => {
    const event = new ICAL.Event(component);
    if (!event.isRecurring()) return [event.startDate.toJSDate().getTime()];
    const found: number[] = [];
    const all = event.iterator();
    for (let next = all.next(); next !== null && next !== undefined; next = all.next()) {
      const atMs = next.toJSDate().getTime();
      if (atMs >= NOW_MS + YEAR_MS) break;
      found.push(atMs);
    }
    return found;
  });
}

/** The same out of the core. */
function expected({ anchor, zone, rule, times = Infinity }: CalendarEntry): readonly number[] {
  const found: number[] = [];
  for (let afterMs = NOW_MS - 1; ;) {
    const next = nextAfter(anchor, zone, rule, afterMs);
    if (next === undefined || next.index >= times || next.atMs >= NOW_MS + YEAR_MS) return found;
    found.push(next.atMs);
    afterMs = next.atMs;
  }
}

describe('a calendar read back by another parser (RFC 5545)', () => {
  for (const zone of zones) {
    it.each(Object.keys(rules))(`has the same times for a year: %s, ${zone}`, (name) => {
      for (const anchor of anchors) {
        const one = entry(rules[name] ?? { every: 'once' }, zone, anchor);
        expect(readBack(calendarText('x', [one], NOW_MS)), anchor).toEqual(expected(one));
      }
    });
  }

  it('ends where the times do, counted from the next', () => {
    const one = entry({ every: 'days', count: 1 }, 'Europe/Berlin', '2026-01-01 09:00', { times: 5 });
    expect(readBack(calendarText('x', [one], NOW_MS))).toHaveLength(3);
    expect(calendarText('x', [one], NOW_MS)).toContain('COUNT=3');
  });

  it.each(['Europe/Berlin', 'UTC', 'Africa/Casablanca'])('leaves a pause out, %s', (zone) => {
    const pause = { fromMs: Date.UTC(2026, 0, 10), untilMs: Date.UTC(2026, 0, 20) };
    const one = entry({ every: 'days', count: 2 }, zone, '2026-01-03 09:00', { pause });
    const kept = expected(one).filter((atMs) => atMs < pause.fromMs || atMs >= pause.untilMs);
    expect(readBack(calendarText('x', [one], NOW_MS))).toEqual(kept);
  });
});

function dayOf(atMs: number): string {
  return localTime(atMs, 'America/Chicago').slice(0, 10);
}

describe('clock changes', () => {
  /**
   * 02:30 on 8 March 2026 is not there in Chicago. RFC 5545 section 3.3.5 reads it with the offset before the gap, so
   * it is 03:30; so does the core. The other parser uses the offset after it, so there the dates are compared.
   */
  it('keeps a time in the skipped hour once a day, and every other day exactly', () => {
    const one = entry({ every: 'days', count: 1 }, 'America/Chicago', '2026-01-04 02:30');
    const back = readBack(calendarText('x', [one], NOW_MS));
    const want = expected(one);
    expect(back.map(dayOf)).toEqual(want.map(dayOf));
    expect(back.filter((atMs, index) => atMs !== want[index]).map(dayOf)).toEqual(['2026-03-08']);
  });

  it('has a time in the doubled hour once, the first', () => {
    const one = entry({ every: 'days', count: 1 }, 'America/Chicago', '2026-01-04 01:30');
    const back = readBack(calendarText('x', [one], NOW_MS));
    const onDay = back.filter((atMs) => dayOf(atMs) === '2026-11-01');
    expect(onDay).toHaveLength(1);
    // ical.js takes the second of the two; RFC 5545 section 3.3.5 and the core the first.
    expect([0, 3_600_000]).toContain((onDay[0] ?? 0) - instantOf('2026-11-01 01:30', 'America/Chicago'));
    expect(back.map(dayOf)).toEqual(expected(one).map(dayOf));
  });

  it('lets a first time that is skipped stand alone, so that it moves none that follow', () => {
    const one = entry({ every: 'days', count: 1 }, 'America/Chicago', '2026-03-08 02:30');
    const text = calendarText('x', [one], NOW_MS);
    expect(text).toContain('DTSTART;TZID=America/Chicago:20260308T033000');
    expect(text).toContain('DTSTART;TZID=America/Chicago:20260309T023000');
  });
});

describe('the text', () => {
  const one = entry({ every: 'weeks', count: 1, on: [6] }, 'Europe/Berlin', '2026-01-03 09:00');
  const text = calendarText('Tank reminders', [one], NOW_MS);

  it('is the same each time it is written at the same moment', () =>
    expect(calendarText('Tank reminders', [one], NOW_MS)).toBe(text));

  it.each([
    'VERSION:2.0',
    'PRODID:-//Sumpside//reminders//EN',
    'UID:reminder-1@sumpside.invalid',
    'DTSTAMP:20260103T070000Z',
    'RRULE:FREQ=WEEKLY;INTERVAL=1;WKST=SA;BYDAY=SA',
    'BEGIN:VTIMEZONE',
    'TZID:Europe/Berlin',
  ])('has %s', (line) => expect(text.split('\r\n')).toContain(line));

  it('has no line longer than 75 octets, and none without CRLF (section 3.1)', () => {
    const summary = 'Größe, Fluss; und \\ mehr — 水を替える '.repeat(4);
    const long = calendarText('x', [{ ...one, summary }], NOW_MS);
    expect(long.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
    for (const line of long.split('\r\n'))
      expect(new TextEncoder().encode(line).length).toBeLessThanOrEqual(75);
    const event = new ICAL.Component(ICAL.parse(long) as unknown as string).getFirstSubcomponent('vevent');
    expect(event?.getFirstPropertyValue('summary')).toBe(summary);
  });

  it.each(['x\r\nEND:VEVENT\r\nBEGIN:VALARM', 'a\nb', 'a,b;c\\n'])(
    'keeps %j inside the summary',
    (summary) => {
      const back = new ICAL.Component(
        ICAL.parse(calendarText('x', [{ ...one, summary }], NOW_MS)) as unknown as string,
      );
      expect(back.getAllSubcomponents('vevent')).toHaveLength(1);
      expect(back.getAllSubcomponents('vevent')[0]?.getAllSubcomponents()).toEqual([]);
    },
  );
});

describe('time zones', () => {
  it('are written where one yearly rule says what the zone does, and else left to UTC', () => {
    expect(zoneBlock('Europe/Berlin', NOW_MS)).toContain('BYMONTH=3;BYDAY=-1SU');
    expect(zoneBlock('Asia/Kolkata', NOW_MS)).toContain('+0530');
    expect(zoneBlock('Africa/Casablanca', NOW_MS)).toBeUndefined();
  });
});
