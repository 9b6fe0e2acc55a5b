import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type Database from 'better-sqlite3';
import { openDatabase } from '../../../bot/store/database.ts';
import { afterEach } from 'vitest';
import type { NewAddition, NewEntry, TankProfile } from '../../../commands/keep.ts';
import type { NewPlacing } from '../../../commands/placed.ts';
import type { Plan } from '../../../commands/reminder.ts';
import { openStore, type Store } from '../../../bot/store/open.ts';

export const ADA = '100000000000000001';
export const BEA = '20000000000000000002';
export const CYD = '300000000000000003';
export const DAN = '400000000000000004';
export const NOW_MS = Date.UTC(2026, 2, 14, 9, 30);
export const HOUR_MS = 3_600_000;
export const DAY_MS = 24 * HOUR_MS;

const folders: string[] = [];
const stores: Store[] = [];

afterEach(() => {
  for (const store of stores.splice(0)) store.close();
  for (const folder of folders.splice(0)) rmSync(folder, { recursive: true, force: true });
});

/** A folder that is gone after the test. */
export function newFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'store-'));
  folders.push(folder);
  return folder;
}

export function newFile(): string {
  return join(newFolder(), 'sumpside.sqlite');
}

/** A store that is closed after the test. */
export function opened(file = ':memory:', nowMs: () => number = () => NOW_MS): Store {
  const store = openStore({ file, nowMs });
  stores.push(store);
  return store;
}

/** Opens the file beside the store's own code. */
export function raw<T>(file: string, work: (db: Database.Database) => T): T {
  const db = openDatabase(file);
  try {
    return work(db);
  } finally {
    db.close();
  }
}

export function profile(name: string, more: Partial<TankProfile> = {}): TankProfile {
  return {
    name,
    kind: 'mixed',
    netVolumeL: 250,
    volumeBasis: '120 x 50 x 50 cm inside, less 15 % rock',
    units: {},
    targets: {},
    ...more,
  };
}

/** Alkalinity (dKH) alone, `hours` after the tests' now. */
export function alkalinity(value: number, hours = 0, note?: string): NewEntry {
  return { atMs: NOW_MS + hours * HOUR_MS, values: [{ parameter: 'alkalinity', value }], note };
}

export const SPOT = { xCm: 20.5, yCm: 10, zCm: 0 };

export function placing(more: Partial<NewPlacing> = {}): NewPlacing {
  return {
    coralId: 'torch-coral',
    spot: SPOT,
    rough: false,
    diameterCm: 12.5,
    origin: 'unknown',
    ...more,
  };
}

export function addition(rise: number, hours = 0): NewAddition {
  return {
    atMs: NOW_MS + hours * HOUR_MS,
    compound: 'soda ash',
    massG: 12.5,
    parameter: 'alkalinity',
    rise,
  };
}

/** Every day at 09:00 in Amsterdam, to the member alone. */
export function planned(text: string, more: Partial<Plan> = {}): Plan {
  return {
    text,
    parameters: [],
    anchor: '2026-03-14 09:00',
    zone: 'Europe/Amsterdam',
    rule: { every: 'days', count: 1 },
    place: { kind: 'direct' },
    ...more,
  };
}

/** So many hours after the tests' now. */
export function atHour(hours: number): number {
  return NOW_MS + hours * HOUR_MS;
}

/** A clock that a test sets. */
export function handClock(): { nowMs: number; read: () => number } {
  const clock = { nowMs: NOW_MS, read: () => clock.nowMs };
  return clock;
}
