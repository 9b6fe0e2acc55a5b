import type { Keep } from '../../commands/keep.ts';
import type { DueStore } from '../clock/due.ts';
import type { Logger } from '../log.ts';
import { openBackups } from './backup.ts';
import { connect } from './connection.ts';
import { explained } from './explain.ts';
import { openDue } from './due.ts';
import { openKeeps } from './keep.ts';
import { migrate, migrations } from './migrations.ts';
import type { LastingCases } from '../talks.ts';
import type { HeldBodies } from './held.ts';
import type { Servers } from './servers.ts';
import { openTables } from './tables.ts';

export interface StoreOptions {
  /** A path, or ":memory:". */
  readonly file: string;
  readonly nowMs: () => number;
  readonly log?: Logger | undefined;
}

/** What a server set is kept for so long after the bot has left it. */
const SERVER_KEPT_MS = 30 * 24 * 60 * 60 * 1000;

export interface Store extends Servers {
  /** What is kept of one person: a Discord id, or `LOCAL_PERSON` in the terminal room. */
  readonly keepFor: (personId: string) => Keep;
  /** For the clock loop. */
  readonly due: DueStore;
  /** For talks in threads and posts. */
  readonly lastingCases: LastingCases;
  /** What buttons stand for. */
  readonly held: Pick<HeldBodies, 'hold' | 'find'>;
  /** How many people something is kept of. */
  readonly personCount: () => number;
  /** Resolves with the path of the copy. A store in memory has none. */
  readonly backupNow: () => Promise<string>;
  /**
   * To be called every so often: removes what is over, and makes the day's copy (UTC) if it is not there, with its path;
   * a store in memory makes none.
   */
  readonly upkeep: (nowMs: number) => Promise<string | undefined>;
  /** A copy under way is given up and rejects. */
  readonly close: () => void;
}

/**
 * Opens the file, makes it if it is not there, and brings it up to date. It is this process's alone until it is closed.
 *
 * @throws Problem about DATA_DIR: a second bot, a folder that cannot be written, a file that is not ours or too new.
 */
export function openStore({ file, nowMs, log }: StoreOptions): Store {
  return explained(file, () => {
    const { db, version } = connect(file);
    const backups = openBackups(db, file);
    try {
      migrate(db, version, () => backups.beforeLeaving(version, nowMs()));
      if (version < migrations.length)
        log?.info({ from: version, to: migrations.length }, 'store brought up to date');
      const tables = openTables(db, nowMs);
      const inMemory = file === ':memory:';
      return {
        ...tables.servers,
        keepFor: openKeeps(db, tables, nowMs),
        due: openDue(db, tables),
        lastingCases: tables.told,
        held: tables.held,
        personCount: tables.people.count,
        backupNow: async () => {
          if (inMemory) throw new Error('a store in memory has no backup');
          return backups.now(nowMs());
        },
        upkeep: async (dueMs) => {
          tables.shownTanks.forgetOver();
          tables.told.forgetOver();
          tables.held.forgetOver();
          tables.servers.forgetServersLeftBefore(dueMs - SERVER_KEPT_MS);
          return inMemory ? undefined : backups.whenDue(dueMs);
        },
        close: () => void db.close(),
      };
    } catch (error) {
      db.close();
      throw error;
    }
  });
}
