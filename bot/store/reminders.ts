import type Database from 'better-sqlite3';
import { MOST_REMINDERS, type Plan, type Progress, type Reminder } from '../../commands/reminder.ts';
import { Problem } from '../../core/problem.ts';
import type { Leases } from './leases.ts';
import { roomFor } from './limits.ts';
import {
  localTime,
  planRow,
  progressOf,
  progressRow,
  reminderColumns,
  reminderOf,
  type FoundReminder,
  type PlanRow,
  type ProgressRow,
} from './reminder-row.ts';
import { dueOf, wakeOf } from '../../commands/remind/wake.ts';
import { say } from '../../core/wording/say.ts';

/** The reminders of the person with the key `person`; every other one does not exist, but for `find` and `move`. */
export interface Reminders {
  readonly all: (person: number) => readonly Reminder[];
  readonly add: (person: number, made: readonly (readonly [Plan, Progress])[]) => readonly Reminder[];
  readonly change: (person: number, id: number, plan: Plan, progress: Progress) => Reminder | undefined;
  readonly remove: (person: number, id: number) => boolean;
  /** Anyone's: the caller checks whose it is. */
  readonly find: (id: number) => FoundReminder | undefined;
  readonly move: (found: FoundReminder, anchor: string, progress: Progress) => Reminder;
}

type Written = PlanRow & ProgressRow & { readonly wakeMs: number | null };

export function openReminders(db: Database.Database, leases: Leases): Reminders {
  const insert = db.prepare<[Written & { readonly person: number }]>(`
    INSERT INTO reminder (person, tank, text, parameters, anchor, zone, rule, times, server, channel, next_ms, again_ms,
      pause_from_ms, pause_until_ms, last_done_ms, trouble, wake_ms)
    VALUES (@person, @tank, @text, @parameters, @anchor, @zone, @rule, @times, @server, @channel, @nextMs, @againMs,
      @pauseFromMs, @pauseUntilMs, @lastDoneMs, @trouble, @wakeMs)`);
  const update = db.prepare<[Written & { readonly id: number }]>(`
    UPDATE reminder SET tank = @tank, text = @text, parameters = @parameters, anchor = @anchor, zone = @zone,
      rule = @rule, times = @times, server = @server, channel = @channel, next_ms = @nextMs, again_ms = @againMs,
      pause_from_ms = @pauseFromMs, pause_until_ms = @pauseUntilMs, last_done_ms = @lastDoneMs, trouble = @trouble,
      wake_ms = @wakeMs
    WHERE id = @id`);
  const select = db.prepare<[number], FoundReminder>(
    `SELECT ${reminderColumns} FROM reminder WHERE person = ? ORDER BY id`,
  );
  const find = db.prepare<[number], FoundReminder>(`SELECT ${reminderColumns} FROM reminder WHERE id = ?`);
  const count = db.prepare<[number], number>('SELECT count(*) FROM reminder WHERE person = ?').pluck();
  const erase = db.prepare<[number, number]>('DELETE FROM reminder WHERE person = ? AND id = ?');
  const owns = db.prepare<[number, number], 1>('SELECT 1 FROM tank WHERE id = ? AND person = ?').pluck();

  const rowOf = (person: number, plan: Plan): PlanRow => {
    if (plan.tankId === undefined || owns.get(plan.tankId, person) === 1) return planRow(plan);
    throw new Problem(say('tank.notYours'), { field: 'tank' });
  };
  /** An occurrence that is being sent stays with the loop that sends it, unless the change is about when it is due. */
  const write = db.transaction((found: FoundReminder, plan: PlanRow, progress: Progress): Reminder => {
    const row = { ...found, ...plan, ...progressRow(progress), wakeMs: wakeOf(progress) ?? null };
    update.run(row);
    if (dueOf(progress) !== dueOf(progressOf(found))) leases.end(found.id);
    return reminderOf(row);
  });
  const add = db.transaction((person: number, made: readonly (readonly [Plan, Progress])[]) => {
    roomFor('reminder', (count.get(person) ?? 0) + made.length, MOST_REMINDERS, 'log.roomForReminders');
    return made.map(([plan, progress]) => {
      const wakeMs = wakeOf(progress) ?? null;
      const row = { ...rowOf(person, plan), ...progressRow(progress), person, wakeMs };
      return reminderOf({ ...row, id: Number(insert.run(row).lastInsertRowid) });
    });
  });
  return {
    all: (person) => select.all(person).map(reminderOf),
    add,
    change: (person, id, plan, progress) => {
      const found = find.get(id);
      return found?.person === person ? write(found, rowOf(person, plan), progress) : undefined;
    },
    remove: (person, id) => erase.run(person, id).changes === 1,
    find: (id) => find.get(id),
    move: (found, anchor, progress) => write(found, { ...found, anchor: localTime(anchor) }, progress),
  };
}
