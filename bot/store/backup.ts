import { existsSync, mkdirSync, readdirSync, renameSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import type Database from 'better-sqlite3';
import { openDatabase } from './database.ts';
import { backupNames, type BackupNames } from './backup-name.ts';

export const BACKUPS_KEPT = 7;

export interface Backups {
  /** Copies the open file while it is in use; resolves with the path of the copy. */
  readonly now: (nowMs: number) => Promise<string>;
  /** The same, unless that day has its copy already. */
  readonly whenDue: (nowMs: number) => Promise<string | undefined>;
  /** At once, while nothing else runs: before a file of `version` is changed. */
  readonly beforeLeaving: (version: number, nowMs: number) => string;
}

export function openBackups(db: Database.Database, file: string): Backups {
  const names = backupNames(file);
  let running: Promise<string> | undefined;
  const copy = async (nowMs: number): Promise<string> => {
    prepare(names);
    try {
      await db.backup(names.part);
      return finish(names, names.daily(nowMs));
    } finally {
      removePart(names);
    }
  };
  const now = (nowMs: number): Promise<string> => {
    running ??= copy(nowMs).finally(() => (running = undefined));
    return running;
  };
  return {
    now,
    whenDue: async (nowMs) => (existsSync(names.daily(nowMs)) ? undefined : await now(nowMs)),
    beforeLeaving: (version, nowMs) => {
      prepare(names);
      db.prepare('VACUUM INTO ?').run(names.part);
      return finish(names, names.beforeLeaving(version, nowMs));
    },
  };
}

function prepare(names: BackupNames): void {
  mkdirSync(names.folder, { recursive: true, mode: 0o700 });
  removePart(names);
}

function removePart({ part }: BackupNames): void {
  for (const path of [part, `${part}-journal`]) rmSync(path, { force: true });
}

/** Without the write-ahead log, a copy is one file and can be read where nothing may be written. */
function finish(names: BackupNames, path: string): string {
  const copy = openDatabase(names.part);
  copy.pragma('journal_mode = DELETE');
  copy.close();
  renameSync(names.part, path);
  removeOld(names);
  return path;
}

/** Removes copies older than the oldest of the daily ones that are kept; never a file with any other name. */
function removeOld({ folder, read }: BackupNames): void {
  const copies = readdirSync(folder).flatMap((name) => {
    const found = read(name);
    return found === undefined ? [] : [{ name, ...found }];
  });
  const days = copies.flatMap(({ day, isDaily }) => (isDaily ? [day] : [])).sort();
  const oldest = days.at(-BACKUPS_KEPT);
  if (oldest === undefined) return;
  for (const { name, day } of copies) if (day < oldest) rmSync(join(folder, name));
}
