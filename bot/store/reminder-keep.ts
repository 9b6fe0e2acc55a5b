import type Database from 'better-sqlite3';
import type { NewHandOver, Plan, Progress, ReminderKeep } from '../../commands/reminder.ts';
import type { FoundReminder } from './reminder-row.ts';
import { reminderOf } from './reminder-row.ts';
import type { Tables } from './tables.ts';

/** Binds what is about reminders to one person at a time; see `openKeeps`. */
export function openReminderKeeps(
  db: Database.Database,
  tables: Tables,
): (discordId: string) => ReminderKeep {
  const { people, reminders, handOvers, notices } = tables;
  const setZone = db.transaction((id: string, zone: string) => people.setZone(people.keyOrNew(id), zone));
  const add = db.transaction((id: string, made: readonly (readonly [Plan, Progress])[]) =>
    reminders.add(people.keyOrNew(id), made),
  );
  const addHandOver = db.transaction((id: string, made: NewHandOver) =>
    handOvers.add(people.keyOrNew(id), made),
  );
  return (id) => {
    const me = (): number => people.keyOf(id);
    const mayMove = (reminderId: number): FoundReminder | undefined => {
      const found = reminders.find(reminderId);
      if (found === undefined || found.person === me()) return found;
      return handOvers.sits(me(), found.person, found.tank) ? found : undefined;
    };
    return {
      zone: () => people.zone(me()),
      setZone: (zone) => setZone(id, zone),
      reminders: () => reminders.all(me()),
      addReminder: (plan, progress) => {
        const [made] = add(id, [[plan, progress]]);
        if (made === undefined) throw new Error('a reminder was not made');
        return made;
      },
      addReminders: (made) => add(id, made),
      changeReminder: (reminderId, plan, progress) => reminders.change(me(), reminderId, plan, progress),
      removeReminder: (reminderId) => reminders.remove(me(), reminderId),
      reminder: (reminderId) => {
        const found = mayMove(reminderId);
        return found && { reminder: reminderOf(found), mine: found.person === me() };
      },
      moveReminder: (reminderId, anchor, progress) => {
        const found = mayMove(reminderId);
        return found && reminders.move(found, anchor, progress);
      },
      handOvers: () => handOvers.all(me()),
      addHandOver: (made) => addHandOver(id, made),
      answerHandOver: (handOverId, accept) => handOvers.answer(me(), handOverId, accept),
      endHandOver: (handOverId) => handOvers.end(me(), handOverId),
      takeNotices: () => notices.take(id),
    };
  };
}
