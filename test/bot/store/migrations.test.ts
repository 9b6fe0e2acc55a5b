import { existsSync, readdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { openDatabase } from '../../../bot/store/database.ts';
import { describe, expect, it } from 'vitest';
import { openBackups } from '../../../bot/store/backup.ts';
import { APPLICATION_ID, migrate, migrations, versionOf } from '../../../bot/store/migrations.ts';
import { ADA, BEA, newFile, NOW_MS, opened, placing, planned, profile, raw } from './place.ts';
import { version1 } from './version-1.ts';
import { version2 } from './version-2.ts';
import { version3 } from './version-3.ts';
import { version4 } from './version-4.ts';

/** Migrations of a bot that is to come. */
const later = [...migrations, 'ALTER TABLE tank ADD COLUMN colour TEXT', "UPDATE tank SET colour = 'blue'"];

function bringUp(file: string, steps: readonly string[]): void {
  const db = openDatabase(file);
  db.pragma('main.locking_mode = EXCLUSIVE');
  db.pragma('journal_mode = WAL');
  const version = versionOf(db) ?? Number.NaN;
  const backups = openBackups(db, file);
  try {
    migrate(db, version, () => backups.beforeLeaving(version, NOW_MS), steps);
  } finally {
    db.close();
  }
}

function old(): string {
  const file = newFile();
  raw(file, (db) => db.exec(version1));
  return file;
}

function schemaOf(file: string): readonly string[] {
  const select = 'SELECT sql FROM sqlite_schema WHERE sql IS NOT NULL ORDER BY name';
  return raw(file, (db) => db.prepare<[], string>(select).pluck().all()).map((sql) =>
    sql.replaceAll(/\s+/g, ' '),
  );
}

describe('the file of version 1', () => {
  it('opens, and nothing of it is lost', () => {
    const keep = opened(old()).keepFor(ADA);
    const [tank] = keep.tanks();
    expect(tank).toEqual({
      id: 9,
      name: 'Pantry',
      kind: 'small-polyp',
      netVolumeL: 283.9,
      displayVolumeL: 300,
      volumeBasis: '75 gal, read as US gallons',
      startedOn: '2024-02-29',
      instrument: 'refractometer',
      lightHours: 9.5,
      units: { volume: 'US gal' },
      targets: { alkalinity: [7.5, 8.5] },
    });
    expect([keep.zone(), tank?.zone]).toEqual([undefined, undefined]);
    expect([keep.reminders(), keep.handOvers(), keep.takeNotices()]).toEqual([[], [], []]);
    expect(keep.tankInUse()).toEqual(tank);
    expect(keep.lastEntry(9)).toEqual({
      id: 31,
      atMs: 1_700_000_100_000,
      madeMs: 1_700_000_200_000,
      note: 'after the change',
      values: [
        { parameter: 'salinity', value: 34.9 },
        { parameter: 'alkalinity', value: 7.6 },
      ],
    });
    expect(keep.additions(9, {})).toEqual([
      {
        id: 4,
        atMs: 1_700_000_300_000,
        parameter: 'alkalinity',
        rise: 0.7,
        compound: 'soda ash',
        massG: 38.5,
      },
    ]);
  });

  it('is copied before it is changed, and takes what is new', () => {
    const file = old();
    const store = opened(file);
    const keep = store.keepFor(ADA);
    const copy = join(dirname(file), 'backups', 'sumpside-2026-03-14-from-version-1.sqlite');
    raw(copy, (db) => {
      expect(versionOf(db)).toBe(1);
      expect(db.prepare('SELECT count(*) FROM reading').pluck().get()).toBe(2);
    });
    const tank = keep.editTank(9, profile('Pantry', { zone: 'Pacific/Apia' }));
    expect(keep.tanks()).toEqual([tank]);
    const made = keep.addReminder(planned('test', { tankId: 9 }), { nextMs: NOW_MS });
    store.close();
    expect(raw(file, versionOf)).toBe(migrations.length);
    expect(opened(file).keepFor(ADA).reminders()).toEqual([made]);
  });

  it('ends with the schema of a new file', () => {
    const upgraded = old();
    const fresh = newFile();
    for (const file of [upgraded, fresh]) opened(file).close();
    expect(schemaOf(upgraded)).toEqual(schemaOf(fresh));
  });
});

function second(): string {
  const file = newFile();
  raw(file, (db) => db.exec(version2));
  return file;
}

describe('the file of version 2', () => {
  it('opens with its reminders, is copied first, and takes corals', () => {
    const file = second();
    const store = opened(file);
    const keep = store.keepFor(ADA);
    expect(keep.tanks().map(({ id, name, zone }) => [id, name, zone])).toEqual([
      [9, 'Pantry', 'Pacific/Apia'],
    ]);
    expect([keep.glass(9), keep.corals(9), keep.lightPoints(9)]).toEqual([
      { box: undefined, flow: undefined },
      [],
      [],
    ]);
    expect(keep.reminders()).toMatchObject([{ id: 3, text: 'test alkalinity', tankId: 9, nextMs: NOW_MS }]);
    expect(keep.zone()).toBe('Asia/Tokyo');
    const copy = join(dirname(file), 'backups', 'sumpside-2026-03-14-from-version-2.sqlite');
    raw(copy, (db) => expect(versionOf(db)).toBe(2));
    const made = keep.addCoral(9, placing());
    store.close();
    expect(raw(file, versionOf)).toBe(migrations.length);
    expect(opened(file).keepFor(ADA).corals(9)).toEqual([made]);
  });

  it('ends with the schema of a new file', () => {
    const [upgraded, fresh] = [second(), newFile()];
    for (const file of [upgraded, fresh]) opened(file).close();
    expect(schemaOf(upgraded)).toEqual(schemaOf(fresh));
  });
});

function third(): string {
  const file = newFile();
  raw(file, (db) => db.exec(version3));
  return file;
}

describe('the file of version 3', () => {
  it('opens with its corals, is copied first, and takes a tank that is shown', () => {
    const file = third();
    const store = opened(file);
    const keep = store.keepFor(ADA);
    expect(keep.glass(9)).toEqual({
      box: { lengthCm: 118, widthCm: 47.6, heightCm: 46 },
      flow: 'left to right',
    });
    expect(keep.corals(9)).toMatchObject([{ id: 7, coralId: 'torch-coral', label: 'the old one' }]);
    expect(keep.lightPoints(9)).toMatchObject([{ id: 2, ppfd: 120 }]);
    expect(keep.viewers(9)).toEqual([]);
    const copy = join(dirname(file), 'backups', 'sumpside-2026-03-14-from-version-3.sqlite');
    raw(copy, (db) => expect(versionOf(db)).toBe(3));
    const shown = keep.showTo(9, BEA);
    store.close();
    expect(raw(file, versionOf)).toBe(migrations.length);
    expect(opened(file).keepFor(ADA).viewers(9)).toEqual([shown]);
  });

  it('ends with the schema of a new file', () => {
    const [upgraded, fresh] = [third(), newFile()];
    for (const file of [upgraded, fresh]) opened(file).close();
    expect(schemaOf(upgraded)).toEqual(schemaOf(fresh));
  });
});

function fourth(): string {
  const file = newFile();
  raw(file, (db) => db.exec(version4));
  return file;
}

describe('the file of version 4', () => {
  it('opens with the tank that is shown, is copied first, and takes what is told in a thread', () => {
    const file = fourth();
    const store = opened(file);
    expect(store.keepFor(ADA).viewers(9)).toEqual([{ helperId: BEA, untilMs: Date.UTC(2100, 0) }]);
    expect(store.keepFor(ADA).told()).toEqual([]);
    const copy = join(dirname(file), 'backups', 'sumpside-2026-03-14-from-version-4.sqlite');
    raw(copy, (db) => expect(versionOf(db)).toBe(4));
    store.lastingCases.put(ADA, 'said in 1', { moments: [], last: 'is that ok' });
    store.close();
    expect(raw(file, versionOf)).toBe(migrations.length);
    expect(opened(file).lastingCases.find(ADA, 'said in 1')?.last).toBe('is that ok');
  });

  it('ends with the schema of a new file', () => {
    const [upgraded, fresh] = [fourth(), newFile()];
    for (const file of [upgraded, fresh]) opened(file).close();
    expect(schemaOf(upgraded)).toEqual(schemaOf(fresh));
  });
});

describe('a later version', () => {
  it('is reached step by step, with a copy of the file as it was', () => {
    const file = old();
    bringUp(file, later);
    raw(file, (db) => {
      expect(versionOf(db)).toBe(later.length);
      expect(db.prepare('SELECT colour FROM tank').pluck().all()).toEqual(['blue']);
    });
    const copy = join(dirname(file), 'backups', 'sumpside-2026-03-14-from-version-1.sqlite');
    raw(copy, (db) => {
      expect(versionOf(db)).toBe(1);
      expect(db.pragma('application_id', { simple: true })).toBe(APPLICATION_ID);
      expect(db.prepare('SELECT count(*) FROM reading').pluck().get()).toBe(2);
      expect(db.pragma('integrity_check', { simple: true })).toBe('ok');
    });
    bringUp(file, later);
    expect(readdirSync(dirname(copy))).toHaveLength(1);
  });

  it('keeps the steps that worked when one fails, and can be tried again', () => {
    const file = old();
    const failing = [...later.slice(0, -1), 'UPDATE tank SET colour = 1; INSERT INTO nowhere VALUES (1)'];
    expect(() => bringUp(file, failing)).toThrow('nowhere');
    raw(file, (db) => {
      expect(versionOf(db)).toBe(later.length - 1);
      expect(db.prepare('SELECT colour FROM tank').pluck().all()).toEqual([null]);
    });
    bringUp(file, later);
    expect(raw(file, versionOf)).toBe(later.length);
  });

  it('is not reached by a step that leaves a reading without its tank', () => {
    const file = old();
    expect(() => bringUp(file, [...migrations, 'DELETE FROM tank'])).toThrow('breaks a reference');
    expect(raw(file, versionOf)).toBe(migrations.length);
    expect(opened(file).keepFor(ADA).tanks()).toHaveLength(1);
  });

  it('needs no copy of a new file', () => {
    const file = newFile();
    bringUp(file, later);
    expect(existsSync(join(dirname(file), 'backups'))).toBe(false);
  });

  it('checks references again afterwards', () => {
    const db = openDatabase(':memory:');
    migrate(db, 0, () => expect.unreachable());
    expect(db.pragma('foreign_keys', { simple: true })).toBe(1);
    db.close();
  });
});
