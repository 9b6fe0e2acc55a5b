import type Database from 'better-sqlite3';

/**
 * Which reminders are being sent. Apart from `reminder`, so that a claim writes a few pages of a small table, not one
 * page for each row of a large one. A row without a running lease tells of attempts that ended in the middle.
 */
export interface Leases {
  /** Counts an attempt. */
  readonly take: (reminder: number, untilMs: number) => void;
  /** Ends the lease and keeps the count. Whether there was one. */
  readonly giveBack: (reminder: number) => boolean;
  readonly end: (reminder: number) => void;
}

export function openLeases(db: Database.Database): Leases {
  const take = db.prepare<[number, number]>(`
    INSERT INTO lease (reminder, until_ms, attempts) VALUES (?, ?, 1)
    ON CONFLICT (reminder) DO UPDATE SET until_ms = excluded.until_ms, attempts = attempts + 1`);
  const giveBack = db.prepare<[number]>('UPDATE lease SET until_ms = 0 WHERE reminder = ? AND until_ms > 0');
  const end = db.prepare<[number]>('DELETE FROM lease WHERE reminder = ?');
  return {
    take: (reminder, untilMs) => void take.run(reminder, untilMs),
    giveBack: (reminder) => giveBack.run(reminder).changes === 1,
    end: (reminder) => void end.run(reminder),
  };
}
