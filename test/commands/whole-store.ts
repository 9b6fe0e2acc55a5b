import type Database from 'better-sqlite3';
import { connect } from '../../bot/store/connection.ts';
import { openKeeps } from '../../bot/store/keep.ts';
import { migrate } from '../../bot/store/migrations.ts';
import { openTables } from '../../bot/store/tables.ts';
import type { Keep } from '../../commands/keep.ts';

export interface WholeStore {
  readonly keepFor: (personId: string) => Keep;
  /** Every row of every table, as text. */
  readonly rows: () => string;
}

/** The store's own code in memory, with a look at all that is in it. */
export function wholeStore(nowMs: () => number): WholeStore {
  const { db, version } = connect(':memory:');
  migrate(db, version, () => {});
  return { keepFor: openKeeps(db, openTables(db, nowMs), nowMs), rows: () => rowsOf(db) };
}

function rowsOf(db: Database.Database): string {
  const tables = db.prepare<[], string>("SELECT name FROM sqlite_schema WHERE type = 'table'").pluck().all();
  return tables
    .toSorted()
    .map((table) => `${table} ${JSON.stringify(db.prepare(`SELECT * FROM "${table}"`).all())}`)
    .join('\n');
}
