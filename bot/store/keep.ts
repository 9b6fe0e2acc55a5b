import type Database from 'better-sqlite3';
import type { Keep, NewEntry, TankProfile } from '../../commands/keep.ts';
import type { ChosenUnits } from '../../core/quantity/chosen-units.ts';
import { openCoralKeeps } from './coral-keep.ts';
import { openErase } from './erase.ts';
import { exportMember } from './export.ts';
import { openPartings } from './partings.ts';
import { checkPersonId } from './people.ts';
import { openReminderKeeps } from './reminder-keep.ts';
import { openShownKeeps } from './shown-keep.ts';
import type { Tables } from './tables.ts';

/**
 * Binds the tables to one person at a time. The person's key is looked up at each call and never kept: after an erasure
 * the same key may be someone else's.
 */
export function openKeeps(
  db: Database.Database,
  tables: Tables,
  nowMs: () => number,
): (personId: string) => Keep {
  const { people, tanks, entries, readings, additions, watches, told, held } = tables;
  const partings = openPartings(db, tables, nowMs);
  const eraseMember = openErase(db, people, partings);
  const reminderKeepFor = openReminderKeeps(db, tables);
  const coralKeepFor = openCoralKeeps(tables);
  const shownKeepFor = openShownKeeps(tables);
  const setUnits = db.transaction((id: string, units: ChosenUnits) =>
    people.setUnits(people.keyOrNew(id), units),
  );
  const addTank = db.transaction((id: string, profile: TankProfile) =>
    tanks.add(people.keyOrNew(id), profile),
  );
  return (personId) => {
    const id = checkPersonId(personId);
    const me = (): number => people.keyOf(id);
    const has = (tankId: number): boolean => tanks.get(me(), tankId) !== undefined;
    const add = (tankId: number, made: readonly NewEntry[]) =>
      has(tankId) ? entries.add(me(), tankId, made) : [];
    return {
      units: () => people.units(me()),
      setUnits: (units) => setUnits(id, units),
      locale: () => people.locale(me()),
      noteLocale: (locale) => people.setLocale(me(), locale),
      tanks: () => tanks.all(me()),
      tankInUse: () => tanks.inUse(me()),
      addTank: (profile) => addTank(id, profile),
      editTank: (tankId, profile) => tanks.edit(me(), tankId, profile),
      useTank: (tankId) => tanks.use(me(), tankId),
      removeTank: (tankId) => partings.removeTank(me(), tankId),
      addEntry: (tankId, entry) => add(tankId, [entry])[0],
      addEntries: (tankId, made) => add(tankId, made).reduce((sum, { values }) => sum + values.length, 0),
      lastEntry: (tankId) => entries.last(me(), tankId),
      removeEntry: (tankId, entryId) => entries.remove(me(), tankId, entryId),
      readings: (tankId, query) => readings.select(me(), tankId, query),
      latest: (tankId) => readings.latest(me(), tankId),
      addAddition: (tankId, addition) => (has(tankId) ? additions.add(me(), tankId, addition) : undefined),
      removeAddition: (tankId, additionId) => additions.remove(me(), tankId, additionId),
      additions: (tankId, range) => additions.select(me(), tankId, range),
      watches: (tankId) => watches.all(me(), tankId),
      setWatch: (tankId, watch) => {
        if (!has(tankId)) return false;
        watches.set(me(), tankId, watch);
        return true;
      },
      removeWatch: (tankId, parameter) => watches.remove(me(), tankId, parameter),
      ...reminderKeepFor(id),
      ...coralKeepFor(id),
      ...shownKeepFor(id),
      told: () => told.all(me()),
      held: () => held.all(id).map((one) => one.id),
      exportAll: () => exportMember(tables, id, nowMs()),
      eraseAll: () => eraseMember(id),
    };
  };
}
