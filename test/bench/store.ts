import { mkdtempSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { performance } from 'node:perf_hooks';
import Database from 'better-sqlite3';
import type { Keep, NewEntry } from '../../commands/keep.ts';
import { openStore } from '../../bot/store/open.ts';
import { parameterCode } from '../../bot/store/parameter-code.ts';
import { timed, type Timing } from './measure.ts';
import { printRows, type Row } from './table.ts';

const TANKS = 100_000;
const READINGS = 5_000_000;
const AN_ENTRY = 3;
/** Tanks tested every day of the year, with ids from 1; the others are tested about every three weeks. */
const DAILY_TANKS = 100;
/** One entry in so many has a note. */
const NOTE_EVERY = 10;
const DAYS = 365;
const DAY_MS = 86_400_000;
const NOW_MS = Date.UTC(2026, 2, 14);
const YEAR = { fromMs: NOW_MS - DAYS * DAY_MS, toMs: NOW_MS };

/** A store of 5,000,000 readings: how long it takes to open, to add an entry for good, and to answer what commands ask. */
export async function benchStore(): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), 'bench-'));
  try {
    measure(join(folder, 'sumpside.sqlite'));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function measure(file: string): void {
  openStore({ file, nowMs: () => NOW_MS }).close();
  const readings = fill(file);
  const bytes = statSync(file).size;
  const start = performance.now();
  const store = openStore({ file, nowMs: () => NOW_MS });
  const openedMs = performance.now() - start;
  const on = (tanks: number, ask: Ask): Timing =>
    timed(() => {
      const tank = 1 + Math.floor(Math.random() * tanks);
      return ask(store.keepFor(personOf(tank)), tank);
    });
  printRows(`Store of ${TANKS} tanks and ${readings} readings, any tank unless said`, [
    { what: 'bytes a reading, all in', value: bytes / readings, unit: 'B', goal: 80 },
    { what: 'open', value: openedMs, unit: 'ms' },
    ...rows('an entry of three readings added for good', on(TANKS, add), 5),
    ...rows('show: newest of each, last 20', on(TANKS, show), 10),
    ...rows('show, tank tested daily', on(DAILY_TANKS, show), 10),
    ...rows('trend: one parameter over a year, tested daily', on(DAILY_TANKS, trend), 10),
    ...rows('checkup: tank in use, newest of each', on(TANKS, checkup), 10),
  ]);
  store.close();
}

type Ask = (keep: Keep, tank: number) => unknown;
const add: Ask = (keep, tank) => keep.addEntry(tank, anEntry());
const show: Ask = (keep, tank) => [keep.latest(tank), keep.readings(tank, { most: 20 })];
const trend: Ask = (keep, tank) => keep.readings(tank, { parameter: 'alkalinity', ...YEAR });
const checkup: Ask = (keep) => keep.latest(keep.tankInUse()?.id ?? 0);

function rows(what: string, { p50, p99 }: Timing, goal: number): Row[] {
  return [
    { what: `${what}, p50`, value: p50, unit: 'ms' },
    { what: `${what}, p99`, value: p99, unit: 'ms', goal },
  ];
}

function personOf(tank: number): string {
  return String(100_000_000_000_000_000n + BigInt(tank));
}

function anEntry(): NewEntry {
  return {
    atMs: NOW_MS,
    values: [
      { parameter: 'alkalinity', value: 8.1 },
      { parameter: 'calcium', value: 425 },
      { parameter: 'magnesium', value: 1320 },
    ],
  };
}

/** Day by day over all tanks, so that the pages fill up as they do in use; returns how many readings. Nothing need outlive a fall of the machine. */
function fill(file: string): number {
  const db = new Database(file);
  db.pragma('synchronous = OFF');
  db.pragma('journal_mode = OFF');
  db.pragma('foreign_keys = OFF');
  db.pragma('cache_size = -2000000');
  const person = db.prepare('INSERT INTO person (id, discord_id, created_ms) VALUES (?, ?, 0)');
  const tank = db.prepare(
    `INSERT INTO tank (id, person, name, kind, net_volume_l, volume_basis, units, targets)
     VALUES (?, ?, ?, 'mixed', 250.5, '120 x 50 x 50 cm inside, less 15 % rock', '{"volume":"L"}', '{}')`,
  );
  const entry = db.prepare('INSERT INTO entry (person, tank, at_ms, made_ms, note) VALUES (?, ?, ?, ?, ?)');
  const reading = db.prepare(
    'INSERT INTO reading (person, tank, parameter, at_ms, entry, value) VALUES (?, ?, ?, ?, ?, ?)',
  );
  const kinds = (['alkalinity', 'calcium', 'magnesium'] as const).map((id) => parameterCode[id]);
  const bases = [8, 420, 1310];
  let entries = 0;
  const log = (id: number, atMs: number): void => {
    const note = entries++ % NOTE_EVERY === 0 ? 'after the water change' : null;
    const made = entry.run(id, id, atMs, atMs + 60_000, note).lastInsertRowid;
    for (const [i, code] of kinds.entries())
      reading.run(id, id, code, atMs, made, Math.round(((bases[i] ?? 0) + Math.random()) * 100) / 100);
  };
  db.transaction(() => {
    for (let id = 1; id <= TANKS; id++) {
      person.run(id, personOf(id));
      tank.run(id, id, `reef ${id}`);
    }
    db.exec('UPDATE person SET tank_in_use = id');
    let left = READINGS / AN_ENTRY - DAILY_TANKS * DAYS;
    const others = TANKS - DAILY_TANKS;
    for (let day = DAYS; day > 0; day--) {
      const atMs = NOW_MS - day * DAY_MS;
      for (let id = 1; id <= DAILY_TANKS; id++) log(id, atMs + id);
      const today = Math.round(left / day);
      left -= today;
      for (let i = 0; i < today; i++) log(DAILY_TANKS + 1 + ((day * 7919 + i) % others), atMs + i);
    }
  })();
  const readings = Number(db.prepare('SELECT count(*) FROM reading').pluck().get());
  db.close();
  return readings;
}
