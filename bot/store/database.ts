import { createRequire } from 'node:module';
import Database from 'better-sqlite3';

/**
 * Opens a database whose native objects are never let go.
 *
 * better-sqlite3 12.11.1 takes a clean-up hook back when V8 collects one of its objects (database, statement, backup),
 * and Node 24 (seen with 24.21) answers that by aborting the whole process. Held objects are not collected. They are
 * few: the statements made once, one backup a day, a handful while opening. To be removed with version 13, which needs
 * Node 22.
 */
export function openDatabase(file: string, options: Database.Options = {}): Database.Database {
  const db = new Database(file, options);
  const native = Reflect.get(db, nativeKey) as Native;
  const prepare = native.prepare.bind(native);
  const backup = native.backup.bind(native);
  native.prepare = (...given) => hold(prepare(...given));
  native.backup = (...given) => hold(backup(...given));
  hold(native);
  return hold(db);
}

type Make = (...given: unknown[]) => object;

/** The object behind a Database, as the methods of the package use it. */
interface Native {
  prepare: Make;
  backup: Make;
}

const { cppdb: nativeKey } = createRequire(import.meta.url)('better-sqlite3/lib/util') as { cppdb: symbol };

const held: object[] = [];

function hold<T extends object>(made: T): T {
  held.push(made);
  return made;
}
