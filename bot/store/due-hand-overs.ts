import type Database from 'better-sqlite3';
import type { DueHandOver, DueStore } from '../clock/due.ts';
import { handOverOf, selectHandOver, type FoundHandOver } from './hand-over-row.ts';
import type { Tables } from './tables.ts';

/**
 * The news of hand-overs for the clock loop. A row always carries the news that is told next and when: the question at
 * once, the answer once it is given, and from then on the end. Once its last news was told the row goes.
 */
export function openDueHandOvers(
  db: Database.Database,
  { handOvers, notices }: Pick<Tables, 'handOvers' | 'notices'>,
): Pick<DueStore, 'claimHandOvers' | 'settleHandOver' | 'putOffHandOver'> {
  const due = db.prepare<[number, number], FoundHandOver>(
    `${selectHandOver} WHERE hand_over.wake_ms <= ? ORDER BY hand_over.wake_ms, hand_over.id LIMIT ?`,
  );
  const end = db.prepare<[number]>(
    "UPDATE hand_over SET state = 'over', news = 'ended', attempts = 0 WHERE id = ?",
  );
  const lease = db.prepare<[number, number]>(
    'UPDATE hand_over SET wake_ms = ?, attempts = attempts + 1 WHERE id = ?',
  );
  const wait = db.prepare<[number]>(
    "UPDATE hand_over SET news = 'ended', wake_ms = until_ms, attempts = 0 WHERE id = ?",
  );
  const putOff = db.prepare<[number, number]>(
    'UPDATE hand_over SET wake_ms = ? WHERE id = ? AND attempts > 0',
  );
  const claim = db.transaction((nowMs: number, most: number, leaseMs: number): DueHandOver[] =>
    due.all(nowMs, most).map((row) => {
      const found = isPast(row, nowMs) ? ended(row) : row;
      if (found !== row) end.run(row.id);
      lease.run(nowMs + leaseMs, row.id);
      return { handOver: handOverOf(found, nowMs), news: found.news, attempts: found.attempts };
    }),
  );
  const settle = db.transaction((...[id, news, notice]: Parameters<DueStore['settleHandOver']>): void => {
    const found = handOvers.find(id);
    if (found?.news !== news) return;
    if (notice !== undefined) notices.add(found.owner, notice);
    if (notice !== undefined || news === 'ended' || news === 'declined') handOvers.remove(found);
    else wait.run(id);
  });
  return {
    claimHandOvers: (nowMs, most, leaseMs) => claim.immediate(nowMs, most, leaseMs),
    settleHandOver: (id, news, notice) => settle.immediate(id, news, notice),
    putOffHandOver: (id, againMs) => void putOff.run(againMs, id),
  };
}

/** Its time is over, and nobody has been told yet. */
function isPast({ state, untilMs }: FoundHandOver, nowMs: number): boolean {
  return (state === 'asked' || state === 'accepted') && untilMs <= nowMs;
}

function ended(row: FoundHandOver): FoundHandOver {
  return { ...row, state: 'over', news: 'ended', attempts: row.news === 'ended' ? row.attempts : 0 };
}
