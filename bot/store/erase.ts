import type Database from 'better-sqlite3';
import type { Partings } from './partings.ts';
import type { People } from './people.ts';

/**
 * Removes everything of one member: every table hangs on `person` and cascades, or says whose a row is. What was removed is overwritten in the
 * file, and the write-ahead log is emptied, so that its bytes are gone too; the daily backups hold it until they age out.
 */
export function openErase(
  db: Database.Database,
  people: People,
  partings: Partings,
): (discordId: string) => void {
  return (discordId) => {
    partings.removePerson(people.keyOf(discordId), discordId);
    db.pragma('wal_checkpoint(TRUNCATE)');
  };
}
