import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { performance } from 'node:perf_hooks';
import { settled, started } from '../../commands/remind/progress.ts';
import type { Plan } from '../../commands/reminder.ts';
import { occurrence } from '../../core/schedule/repeat.ts';
import { openStore, type Store } from '../../bot/store/open.ts';

/**
 * A process of its own, so that its memory is its own: 20,000 members with three reminders each for 30 days, in which
 * the clocks change. Everything is real but time and the sender, which only counts. Prints a `Month` as JSON.
 */
export interface Month {
  readonly sent: number;
  /** Reminders that were not sent at exactly the occurrences of their rule, each once. */
  readonly wrong: number;
  readonly residentMb: number;
  readonly seconds: number;
}

const MEMBERS = 20_000;
const DAYS = 30;
const BATCH = 50;
const TICK_MS = 60_000;
const LEASE_MS = 120_000;
const START_MS = Date.UTC(2026, 2, 1);
const END_MS = START_MS + DAYS * 86_400_000;

const zones = [
  'Europe/Amsterdam',
  'America/New_York',
  'America/Los_Angeles',
  'Australia/Sydney',
  'Asia/Kolkata',
  'Asia/Tokyo',
  'Europe/London',
  'America/Sao_Paulo',
  'Africa/Johannesburg',
  'Pacific/Auckland',
  'Asia/Kathmandu',
  'UTC',
];

function plansOf(member: number): readonly Plan[] {
  const zone = zones[member % zones.length] ?? 'UTC';
  const time = `${String(6 + (member % 17)).padStart(2, '0')}:${member % 3 === 0 ? '30' : '00'}`;
  const common = { zone, parameters: [], place: { kind: 'direct' } } as const;
  const weekday = ([1, 2, 3, 4, 5, 6, 7] as const)[member % 7] ?? 1;
  const day = String(1 + (member % 28)).padStart(2, '0');
  const anchor = `2026-01-${day} ${time}`;
  return [
    { ...common, text: 'test alkalinity', anchor, rule: { every: 'days', count: 2 + (member % 3) } },
    {
      ...common,
      text: 'change water',
      anchor,
      rule: { every: 'weeks', count: 1 + (member % 2), on: [weekday] },
    },
    {
      ...common,
      text: 'clean pumps',
      anchor,
      rule: { every: 'months', count: 1, on: member % 2 === 0 ? 31 : { nth: 'last', weekday } },
    },
  ];
}

interface Told {
  /** How often each reminder was sent, by its id. */
  readonly times: Uint8Array;
  /** The occurrence sent last, by id: a later one must be later. */
  readonly lastMs: Float64Array;
  late: number;
}

function live(store: Store, told: Told): void {
  for (let nowMs = START_MS; nowMs < END_MS; nowMs += TICK_MS)
    for (;;) {
      const claimed = store.due.claim(nowMs, BATCH, LEASE_MS);
      for (const { reminder, dueMs } of claimed) {
        const { id } = reminder;
        told.times[id] = (told.times[id] ?? 0) + 1;
        if (dueMs <= (told.lastMs[id] ?? 0) || nowMs - dueMs >= TICK_MS) told.late++;
        told.lastMs[id] = dueMs;
        store.due.settle(id, dueMs, settled(reminder, dueMs, nowMs));
      }
      if (claimed.length < BATCH) break;
    }
}

/** Counted from the rules alone: how many occurrences a plan has from the start to the last tick. */
function expected({ anchor, zone, rule }: Plan): number {
  let count = 0;
  for (let index = 0; ; index++) {
    const atMs = occurrence(anchor, zone, rule, index);
    if (atMs === undefined || atMs > END_MS - TICK_MS) return count;
    if (atMs > START_MS) count++;
  }
}

function month(file: string): Month {
  const start = performance.now();
  const store = openStore({ file, nowMs: () => START_MS });
  const told: Told = {
    times: new Uint8Array(3 * MEMBERS + 1),
    lastMs: new Float64Array(3 * MEMBERS + 1),
    late: 0,
  };
  for (let member = 0; member < MEMBERS; member++)
    store
      .keepFor(String(100_000_000_000_000_000n + BigInt(member)))
      .addReminders(plansOf(member).map((plan) => [plan, started(plan, START_MS)] as const));
  live(store, told);
  const residentMb = peakMb();
  const seconds = (performance.now() - start) / 1000;
  store.close();
  let wrong = told.late;
  for (let member = 0; member < MEMBERS; member++)
    for (const [i, plan] of plansOf(member).entries())
      if (told.times[3 * member + i + 1] !== expected(plan)) wrong++;
  return { sent: told.times.reduce((sum, times) => sum + times, 0), wrong, residentMb, seconds };
}

/** Of this process alone: what getrusage tells counts the parent's memory at the fork as well. */
function peakMb(): number {
  return Number(/VmHWM:\s+(\d+)/.exec(readFileSync('/proc/self/status', 'utf8'))?.[1]) / 1024;
}

const folder = mkdtempSync(join(tmpdir(), 'bench-'));
try {
  console.log(JSON.stringify(month(join(folder, 'sumpside.sqlite'))));
} finally {
  rmSync(folder, { recursive: true, force: true });
}
