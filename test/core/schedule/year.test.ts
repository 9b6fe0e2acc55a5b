import { describe, expect, it } from 'vitest';
import { nextAfter } from '../../../core/schedule/repeat.ts';
import type { Rule } from '../../../core/schedule/rule.ts';

const zones = [
  'UTC',
  'America/New_York',
  'America/Chicago',
  'America/Los_Angeles',
  'America/St_Johns',
  'America/Santiago',
  'America/Phoenix',
  'America/Sao_Paulo',
  'America/Havana',
  'Europe/London',
  'Europe/Berlin',
  'Africa/Cairo',
  'Africa/Casablanca',
  'Asia/Kolkata',
  'Asia/Beirut',
  'Australia/Sydney',
  'Australia/Lord_Howe',
  'Pacific/Auckland',
  'Pacific/Chatham',
  'Pacific/Kiritimati',
];
const QUARTER = 15 * 60_000;
const DAY = 96 * QUARTER;

/** Every quarter of an hour around 2026 with what the zone's clock shows then, by formatting alone; as if UTC. */
function clockOf(zone: string): { readonly walls: number[]; readonly instants: number[] } {
  const format = new Intl.DateTimeFormat('sv-SE', { timeZone: zone, dateStyle: 'short', timeStyle: 'short' });
  const walls: number[] = [];
  const instants: number[] = [];
  for (let at = Date.UTC(2025, 11, 30); at < Date.UTC(2027, 0, 3); at += QUARTER) {
    walls.push(Date.parse(`${format.format(at).replace(' ', 'T')}Z`));
    instants.push(at);
  }
  return { walls, instants };
}

/** The first instant that shows `wall`; where none does, as far behind the last one before it as on a running clock. */
function search({ walls, instants }: ReturnType<typeof clockOf>, wall: number): number {
  const found = walls.indexOf(wall);
  if (found >= 0) return instants[found] ?? Number.NaN;
  const before = walls.findIndex((each) => each > wall) - 1;
  return (instants[before] ?? Number.NaN) + wall - (walls[before] ?? Number.NaN);
}

const lastOfMonth = (ms: number) => new Date(ms + DAY).getUTCDate() === 1;
const cases: [string, string, Rule, (ms: number) => boolean][] = [
  ['daily 02:30', '2026-01-01 02:30', { every: 'days', count: 1 }, () => true],
  ['daily 00:00', '2026-01-01 00:00', { every: 'days', count: 1 }, () => true],
  ['daily 01:45', '2026-01-01 01:45', { every: 'days', count: 1 }, () => true],
  [
    'Sundays 03:15',
    '2026-01-01 03:15',
    { every: 'weeks', count: 1, on: [7] },
    (ms) => new Date(ms).getUTCDay() === 0,
  ],
  ['31st 00:30', '2026-01-01 00:30', { every: 'months', count: 1, on: 31 }, lastOfMonth],
];

describe.each(zones)('2026 in %s', (zone) => {
  const clock = clockOf(zone);
  it.each(cases)('%s: every occurrence exactly once', (_name, anchor, rule, due) => {
    const time = Date.parse(`1970-01-01T${anchor.slice(11)}Z`);
    const expected: number[] = [];
    for (let day = Date.UTC(2026, 0); day < Date.UTC(2027, 0); day += DAY) {
      if (due(day)) expected.push(search(clock, day + time));
    }
    const fired: number[] = [];
    let next = nextAfter(anchor, zone, rule, Date.UTC(2025, 11, 1));
    while (next !== undefined && fired.length < expected.length) {
      fired.push(next.atMs);
      next = nextAfter(anchor, zone, rule, next.atMs);
    }
    expect(fired).toEqual(expected);
    expect(expected.length).toBe(
      { days: 365, weeks: 52, months: 12, hours: 0, once: 0, after: 0 }[rule.every],
    );
  });
});
