import { mkdirSync } from 'node:fs';
import { dirname } from 'node:path';
import type Database from 'better-sqlite3';
import { openDatabase } from './database.ts';
import { notOurs, tooNew } from './explain.ts';
import { migrations, versionOf } from './migrations.ts';

/** How long to wait for another process that has the file; it will not let go, so hardly at all. */
const BUSY_MS = 50;

export interface Connection {
  readonly db: Database.Database;
  /** Version the file has, before any migration. */
  readonly version: number;
}

/** Opens the file, makes sure that it is ours and takes it for this process alone until it is closed. */
export function connect(file: string): Connection {
  if (file !== ':memory:') mkdirSync(dirname(file), { recursive: true, mode: 0o700 });
  const db = openDatabase(file, { timeout: BUSY_MS });
  try {
    db.pragma('main.locking_mode = EXCLUSIVE');
    const version = ourVersion(db, file);
    db.pragma('journal_mode = WAL');
    db.pragma('synchronous = FULL');
    db.pragma('foreign_keys = ON');
    db.pragma('secure_delete = ON');
    db.pragma('trusted_schema = OFF');
    db.transaction(() => {}).immediate();
    return { db, version };
  } catch (error) {
    db.close();
    throw error;
  }
}

/** @throws Problem when another program or a newer bot made the file. */
function ourVersion(db: Database.Database, file: string): number {
  const version = versionOf(db);
  if (version === undefined) throw notOurs(file);
  if (version > migrations.length) throw tooNew(file, version, migrations.length);
  return version;
}
