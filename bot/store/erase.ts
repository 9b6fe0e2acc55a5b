import type Database from 'better-sqlite3';

/**
 * Removes everything of one member: every table hangs on `person` and cascades. What was removed is overwritten in the
 * file, and the write-ahead log is emptied, so that its bytes are gone too; the daily backups hold it until they age out.
 */
export function openErase(db: Database.Database): (discordId: string) => void {
  const erase = db.prepare<[string]>('DELETE FROM person WHERE discord_id = ?');
  return (discordId) => {
    erase.run(discordId);
    db.pragma('wal_checkpoint(TRUNCATE)');
  };
}
