import { describe, expect, it } from 'vitest';
import type { Rule } from '../../../core/schedule/rule.ts';
import { daysOf, instantByIntl } from './expected.ts';
import { dueMsOf, hourMs, openRoom, type Room } from './room.ts';

const year = 2026;
const startMs = Date.UTC(year, 0, 1, 12);
const endMs = Date.UTC(year, 11, 31, 12);

/** The clocks of each change twice in 2026, but for Kolkata's; Lord Howe's by half an hour. */
const zones = [
  'Europe/Berlin',
  'America/New_York',
  'America/St_Johns',
  'Australia/Lord_Howe',
  'Pacific/Auckland',
  'Asia/Kolkata',
] as const;

interface Case {
  readonly rule: Rule;
  readonly time: string;
  readonly days: readonly string[];
}

const days = daysOf(year);
const weekday = (day: string): number => new Date(day).getUTCDay();
const month = (day: string): string => day.slice(0, 7);
const lastOf = (day: string, among: readonly string[]): boolean =>
  among.findLast((each) => month(each) === month(day)) === day;
const saturdays = days.filter((day) => weekday(day) === 6);
const sundays = days.filter((day) => weekday(day) === 0);

const cases: readonly Case[] = [
  { rule: { every: 'days', count: 1 }, time: '02:30', days },
  { rule: { every: 'days', count: 1 }, time: '01:45', days },
  { rule: { every: 'days', count: 3 }, time: '09:00', days: days.filter((_, index) => index % 3 === 0) },
  {
    rule: { every: 'weeks', count: 2, on: [6] },
    time: '09:00',
    days: saturdays.filter((_, index) => index % 2 === 0),
  },
  {
    rule: { every: 'months', count: 1, on: 31 },
    time: '18:00',
    days: days.filter((day) => lastOf(day, days)),
  },
  {
    rule: { every: 'months', count: 1, on: { nth: 'last', weekday: 7 } },
    time: '02:15',
    days: sundays.filter((day) => lastOf(day, sundays)),
  },
];

describe('a whole year', () => {
  it('sends every occurrence once, at its time on the wall, in every zone', { timeout: 60_000 }, async () => {
    const room = openRoom('2026-01-01 13:00');
    expect(room.clock.nowMs()).toBe(startMs);
    const expected = new Map(zones.flatMap((zone) => cases.map((each) => remind(room, zone, each))));
    room.begin();
    await room.clock.pass(0);
    while (room.clock.nowMs() < endMs) await room.clock.sleep(hourMs);
    const sent = new Map([...expected.keys()].map((id) => [id, [] as number[]]));
    for (const each of room.sent) {
      const id = Number(/^r(\d+)-/.exec(each.letter.nonce)?.[1]);
      sent.get(id)?.push(dueMsOf(each));
      expect(each.atMs - dueMsOf(each)).toBeLessThanOrEqual(hourMs);
    }
    for (const [id, times] of expected) expect(iso(sent.get(id) ?? [])).toEqual(iso(times));
    expect(room.sent.length).toBeGreaterThan(5000);
  });

  it('counts hours by time elapsed', async () => {
    const room = openRoom('2026-01-01 13:00');
    room.remind({ anchor: '2026-01-01 14:00', rule: { every: 'hours', count: 36 } });
    room.begin();
    await room.clock.pass(0);
    while (room.clock.nowMs() < endMs) await room.clock.sleep(hourMs);
    const dues = room.sent.map(dueMsOf);
    expect(dues[0]).toBe(startMs + hourMs);
    for (const [index, dueMs] of dues.slice(1).entries())
      expect(dueMs - (dues[index] ?? 0)).toBe(36 * hourMs);
    expect(dues).toHaveLength(Math.ceil((endMs - startMs - hourMs) / (36 * hourMs)));
  });
});

function remind(
  room: Room,
  zone: string,
  { rule, time, days: on }: Case,
): readonly [number, readonly number[]] {
  const [first] = on;
  const { id } = room.remind({ anchor: `${first} ${time}`, zone, rule });
  const times = on.map((day) => instantByIntl(day, time, zone));
  return [id, times.filter((atMs) => atMs >= startMs && atMs <= endMs)];
}

function iso(times: readonly number[]): readonly string[] {
  return times.map((atMs) => new Date(atMs).toISOString());
}
