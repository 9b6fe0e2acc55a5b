import { readdirSync, writeFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { setImmediate as turn } from 'node:timers/promises';
import { describe, expect, it } from 'vitest';
import { BACKUPS_KEPT } from '../../../bot/store/backup.ts';
import type { MemberExport } from '../../../bot/store/export.ts';
import { ADA, alkalinity, BEA, DAY_MS, newFile, NOW_MS, opened, profile, raw } from './place.ts';

function backupsOf(file: string): string[] {
  return readdirSync(join(dirname(file), 'backups')).sort();
}

/** Enough for a copy to take many turns of the event loop. */
function filled(file: string) {
  const store = opened(file);
  const keep = store.keepFor(ADA);
  const { id } = keep.addTank(profile('Reef'));
  keep.addEntries(
    id,
    Array.from({ length: 20_000 }, (_, i) => alkalinity(8, -i, `note ${i}`)),
  );
  return { store, keep, id };
}

describe('a backup', () => {
  it('made while the bot writes is whole, and has all that was kept before it began', async () => {
    const file = newFile();
    const { store, keep, id } = filled(file);
    let written = 0;
    const progress = { done: false };
    const backup = store.backupNow().finally(() => (progress.done = true));
    while (!progress.done && written < 5000) {
      keep.addEntry(id, alkalinity(9, written, `during ${written}`));
      written++;
      await turn();
    }
    const copy = await backup;
    expect(written, 'written while it was made').toBeGreaterThan(5);
    expect(basename(copy)).toBe('sumpside-2026-03-14.sqlite');
    raw(copy, (db) => {
      expect(db.pragma('integrity_check', { simple: true })).toBe('ok');
      expect(db.pragma('foreign_key_check')).toEqual([]);
      expect(db.pragma('journal_mode', { simple: true })).toBe('delete');
      const [entries, readings] = ['entry', 'reading'].map((table) =>
        Number(db.prepare(`SELECT count(*) FROM ${table}`).pluck().get()),
      );
      expect(entries).toBe(readings);
      expect(entries).toBeGreaterThanOrEqual(20_000);
      expect(db.prepare("SELECT count(*) FROM entry WHERE note LIKE 'note %'").pluck().get()).toBe(20_000);
    });
    expect(backupsOf(file)).toEqual(['sumpside-2026-03-14.sqlite']);
    expect(keep.readings(id, {})).toHaveLength(20_000 + written);
  });

  it('opens as a store of its own', async () => {
    const { store, keep } = filled(newFile());
    const copy = await store.backupNow();
    expect((opened(copy).keepFor(ADA).exportAll() as MemberExport).tanks).toEqual(
      (keep.exportAll() as MemberExport).tanks,
    );
  });

  it('under way does not hold what a member erases meanwhile', async () => {
    const { store, keep } = filled(newFile());
    store.keepFor(BEA).addTank(profile('Beas'));
    const backup = store.backupNow();
    await turn();
    keep.eraseAll();
    const copy = await backup;
    raw(copy, (db) => {
      expect(db.prepare('SELECT discord_id FROM person').pluck().all()).toEqual([BEA]);
      expect(db.prepare('SELECT count(*) FROM reading').pluck().get()).toBe(0);
      expect(db.pragma('integrity_check', { simple: true })).toBe('ok');
    });
  });

  it('is made once when asked for twice at the same time', async () => {
    const { store } = filled(newFile());
    expect(
      new Set(await Promise.all([store.backupNow(), store.upkeep(NOW_MS), store.backupNow()])).size,
    ).toBe(1);
  });

  it('that is given up leaves nothing, and the next one works', async () => {
    const file = newFile();
    const { store } = filled(file);
    const backup = store.backupNow();
    store.close();
    await expect(backup).rejects.toThrow('not open');
    expect(backupsOf(file)).toEqual([]);
    await opened(file).backupNow();
    expect(backupsOf(file)).toHaveLength(1);
  });

  it('takes the place of the same day, and of one that was left half made', async () => {
    const file = newFile();
    const store = opened(file);
    await store.backupNow();
    writeFileSync(join(dirname(file), 'backups', 'sumpside.part'), 'half of a copy');
    store.keepFor(ADA).addTank(profile('Reef'));
    const copy = await store.backupNow();
    expect(backupsOf(file)).toEqual([basename(copy)]);
    expect(raw(copy, (db) => db.prepare('SELECT count(*) FROM tank').pluck().get())).toBe(1);
  });

  it('is not made of a store in memory', async () => {
    const store = opened();
    await expect(store.backupNow()).rejects.toThrow('in memory');
    expect(await store.upkeep(NOW_MS)).toBeUndefined();
  });
});

describe('the daily backup', () => {
  it('is made once a day, and seven are kept', async () => {
    const file = newFile();
    const store = opened(file);
    const made: (string | undefined)[] = [];
    for (let hour = 0; hour < 24 * 12; hour += 4)
      made.push(await store.upkeep(NOW_MS + hour * (DAY_MS / 24)));
    expect(made.filter((path) => path !== undefined)).toHaveLength(13);
    expect(backupsOf(file)).toHaveLength(BACKUPS_KEPT);
    expect([backupsOf(file)[0], backupsOf(file).at(-1)]).toEqual([
      'sumpside-2026-03-20.sqlite',
      'sumpside-2026-03-26.sqlite',
    ]);
  });

  it('removes only what the bot named, and copies made before a change with the days they are of', async () => {
    const file = newFile();
    const store = opened(file);
    await store.backupNow();
    const others = [
      'sumpside-2020-01-01.sqlite.gz',
      'sumpside-2020-01-01-mine.sqlite',
      'my sumpside-2020-01-01.sqlite',
      'sumpside-2020-1-1.sqlite',
      'room-2020-01-01.sqlite',
      'notes.txt',
    ];
    const early = 'sumpside-2026-03-14-from-version-1.sqlite';
    const late = 'sumpside-2026-03-21-from-version-2.sqlite';
    for (const name of [...others, early, late]) writeFileSync(join(dirname(file), 'backups', name), '');
    for (let day = 1; day < BACKUPS_KEPT; day++) await store.upkeep(NOW_MS + day * DAY_MS);
    expect(backupsOf(file)).toEqual(expect.arrayContaining([...others, early, late]));
    for (let day = BACKUPS_KEPT; day < 10; day++) await store.upkeep(NOW_MS + day * DAY_MS);
    expect(backupsOf(file)).toEqual(expect.arrayContaining([...others, late]));
    expect(backupsOf(file)).not.toContain(early);
    expect(backupsOf(file)).toHaveLength(BACKUPS_KEPT + others.length + 1);
  });
});
