import type Database from 'better-sqlite3';
import type { Progress } from '../../commands/reminder.ts';
import type { DueReminder, DueStore } from '../clock/due.ts';
import { openDueHandOvers } from './due-hand-overs.ts';
import {
  progressOf,
  progressRow,
  reminderColumns,
  reminderOf,
  type FoundReminder,
  type ProgressRow,
} from './reminder-row.ts';
import type { Tables } from './tables.ts';
import { dueOf, isPaused, wakeOf } from '../../commands/remind/wake.ts';

type Row = FoundReminder & { readonly ownerId: string; readonly attempts: number };
type Written = ProgressRow & { readonly id: number; readonly wakeMs: number | null };

/** What the clock loop asks: reminders and hand-overs whose time has come. */
export function openDue(
  db: Database.Database,
  tables: Pick<Tables, 'reminders' | 'leases' | 'handOvers' | 'notices'>,
): DueStore {
  const { reminders, leases, handOvers, notices } = tables;
  const select = db.prepare<[number, number, number], Row>(`
    SELECT ${reminderColumns}, person.discord_id AS ownerId, coalesce(attempts, 0) AS attempts
    FROM reminder CROSS JOIN person ON person.id = reminder.person LEFT JOIN lease ON lease.reminder = reminder.id
    WHERE wake_ms <= ? AND coalesce(until_ms, 0) <= ? ORDER BY wake_ms, reminder.id LIMIT ?`);
  const wake = db.prepare<[number | null, number]>('UPDATE reminder SET wake_ms = ? WHERE id = ?');
  const update = db.prepare<[Written]>(`
    UPDATE reminder SET next_ms = @nextMs, again_ms = @againMs, pause_from_ms = @pauseFromMs,
      pause_until_ms = @pauseUntilMs, last_done_ms = @lastDoneMs, trouble = @trouble, wake_ms = @wakeMs
    WHERE id = @id`);
  /** Progress of those being sent, as it was when they were claimed. */
  const claimed = new Map<number, ProgressRow>();

  /** Undefined for one whose owner paused it meanwhile: it is put off to the end of the pause. */
  const take = (row: Row, nowMs: number, leaseMs: number): DueReminder | undefined => {
    const reminder = reminderOf(row);
    const dueMs = dueOf(reminder);
    const { pause } = reminder;
    if (dueMs === undefined || (pause !== undefined && isPaused(pause, nowMs))) {
      wake.run(pause?.untilMs ?? null, row.id);
      return undefined;
    }
    leases.take(row.id, nowMs + leaseMs);
    claimed.set(row.id, row);
    const handOver = handOvers.covering(row.person, row.tank, nowMs);
    return { reminder, ownerId: row.ownerId, handOver, dueMs, attempts: row.attempts };
  };
  const claim = db.transaction((nowMs: number, most: number, leaseMs: number): readonly DueReminder[] => {
    const taken: DueReminder[] = [];
    for (;;) {
      const rows = select.all(nowMs, nowMs, most - taken.length);
      taken.push(...rows.flatMap((row) => take(row, nowMs, leaseMs) ?? []));
      if (rows.length === 0 || taken.length === most) return taken;
    }
  });
  /** The row, where it is still due at that instant; and what it was when it was claimed. */
  const settling = (id: number, dueMs: number) => {
    const row = reminders.find(id);
    const before = claimed.get(id) ?? row;
    claimed.delete(id);
    return row && before && dueOf(progressOf(row)) === dueMs ? { row, before } : undefined;
  };
  const settle = db.transaction((id: number, dueMs: number, progress: Progress, notice?: string): void => {
    const found = settling(id, dueMs);
    if (found === undefined) return;
    const merged = merge(found.before, found.row, progressRow(progress));
    update.run({ ...merged, id, wakeMs: wakeOf(progressOf(merged)) ?? null });
    leases.end(id);
    if (notice !== undefined) notices.add(found.row.person, notice);
  });
  const putOff = db.transaction((id: number, dueMs: number, againMs: number): void => {
    const row = settling(id, dueMs)?.row;
    const wakeMs = row && wakeOf(progressOf(row));
    if (wakeMs !== undefined && leases.giveBack(id)) wake.run(Math.max(againMs, wakeMs), id);
  });
  return {
    claim: (nowMs, most, leaseMs) => claim.immediate(nowMs, most, leaseMs),
    settle: (id, dueMs, progress) => settle.immediate(id, dueMs, progress),
    putOff: (id, dueMs, againMs) => putOff.immediate(id, dueMs, againMs),
    stop: (id, dueMs, progress, notice) => settle.immediate(id, dueMs, progress, notice),
    ...openDueHandOvers(db, tables),
  };
}

/** What the member changed since the claim stays as they set it. */
function merge(before: ProgressRow, now: ProgressRow, settled: ProgressRow): ProgressRow {
  const either = <K extends keyof ProgressRow>(key: K): ProgressRow[K] =>
    now[key] === before[key] ? settled[key] : now[key];
  return {
    nextMs: either('nextMs'),
    againMs: either('againMs'),
    pauseFromMs: either('pauseFromMs'),
    pauseUntilMs: either('pauseUntilMs'),
    lastDoneMs: either('lastDoneMs'),
    trouble: either('trouble'),
  };
}
