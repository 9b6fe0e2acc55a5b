import type Database from 'better-sqlite3';
import { schema1 } from './schema-1.ts';
import { schema2 } from './schema-2.ts';
import { schema3 } from './schema-3.ts';
import { schema4 } from './schema-4.ts';
import { schema5 } from './schema-5.ts';
import { schema6 } from './schema-6.ts';
import { schema7 } from './schema-7.ts';
import { schema8 } from './schema-8.ts';

/** "SUMP" in ASCII: tells our files from any other SQLite file. */
export const APPLICATION_ID = 0x53_55_4d_50;

/** The n-th brings a file from version n - 1 to n. One that was released is never edited. */
export const migrations: readonly string[] = [
  schema1,
  schema2,
  schema3,
  schema4,
  schema5,
  schema6,
  schema7,
  schema8,
];

/** Version of a file: 0 for an empty one, undefined for one that another program made. */
export function versionOf(db: Database.Database): number | undefined {
  const version = Number(db.pragma('user_version', { simple: true }));
  if (db.pragma('application_id', { simple: true }) === APPLICATION_ID) return version;
  const isEmpty = db.prepare('SELECT count(*) FROM sqlite_schema').pluck().get() === 0;
  return isEmpty && version === 0 ? 0 : undefined;
}

/**
 * Brings a file to the newest version, each step in a transaction of its own; `beforeFirst` runs when a file that
 * already has data is about to change.
 */
export function migrate(
  db: Database.Database,
  from: number,
  beforeFirst: () => void,
  steps: readonly string[] = migrations,
): void {
  const pending = steps.slice(from);
  if (pending.length > 0 && from > 0) beforeFirst();
  db.pragma('foreign_keys = OFF');
  for (const [index, sql] of pending.entries()) db.transaction(() => step(db, sql, from + index + 1))();
  db.pragma('foreign_keys = ON');
}

function step(db: Database.Database, sql: string, version: number): void {
  db.exec(sql);
  const [broken] = db.pragma('foreign_key_check') as unknown[];
  if (broken !== undefined) throw new Error(`migration ${version} breaks a reference`);
  db.pragma(`application_id = ${APPLICATION_ID}`);
  db.pragma(`user_version = ${version}`);
}
