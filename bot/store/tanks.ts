import type Database from 'better-sqlite3';
import { MOST_TANKS, type Tank, type TankProfile } from '../../commands/keep.ts';
import { Problem } from '../../core/problem.ts';
import { say } from '../../core/wording/say.ts';
import { roomFor } from './limits.ts';
import { rowOf, tankOf, type TankRow } from './tank-row.ts';

/** The tanks of the person with the key `person`; every other tank does not exist. */
export interface Tanks {
  readonly all: (person: number) => readonly Tank[];
  readonly get: (person: number, id: number) => Tank | undefined;
  readonly inUse: (person: number) => Tank | undefined;
  readonly add: (person: number, profile: TankProfile) => Tank;
  readonly edit: (person: number, id: number, profile: TankProfile) => Tank | undefined;
  readonly use: (person: number, id: number) => boolean;
  readonly remove: (person: number, id: number) => boolean;
}

const columns = `id, name, kind, net_volume_l AS netVolumeL, display_volume_l AS displayVolumeL,
  volume_basis AS volumeBasis, started_on AS startedOn, instrument, light_hours AS lightHours, zone, units, targets`;

type Found = TankRow & { readonly id: number };
type Written = TankRow & { readonly person: number };

export function openTanks(db: Database.Database): Tanks {
  const select = db.prepare<[number], Found>(`SELECT ${columns} FROM tank WHERE person = ? ORDER BY id`);
  const find = db.prepare<[number, number], Found>(`SELECT ${columns} FROM tank WHERE person = ? AND id = ?`);
  const used = db.prepare<[number], number | null>('SELECT tank_in_use FROM person WHERE id = ?').pluck();
  const insert = db.prepare<[Written]>(`
    INSERT INTO tank (person, name, kind, net_volume_l, display_volume_l, volume_basis, started_on, instrument,
      light_hours, zone, units, targets)
    VALUES (@person, @name, @kind, @netVolumeL, @displayVolumeL, @volumeBasis, @startedOn, @instrument,
      @lightHours, @zone, @units, @targets)`);
  const update = db.prepare<[Written & { readonly id: number }]>(`
    UPDATE tank SET name = @name, kind = @kind, net_volume_l = @netVolumeL, display_volume_l = @displayVolumeL,
      volume_basis = @volumeBasis, started_on = @startedOn, instrument = @instrument, light_hours = @lightHours,
      zone = @zone, units = @units, targets = @targets
    WHERE person = @person AND id = @id`);
  const setUsed = db.prepare<[number | null, number]>('UPDATE person SET tank_in_use = ? WHERE id = ?');
  const erase = db.prepare<[number, number]>('DELETE FROM tank WHERE person = ? AND id = ?');

  const get: Tanks['get'] = (person, id) => {
    const row = find.get(person, id);
    return row && tankOf(row);
  };
  const add = db.transaction((person: number, profile: TankProfile): Tank => {
    const count = select.all(person).length;
    roomFor('tank', count + 1, MOST_TANKS, 'log.roomForTanks');
    const row = rowOf(profile);
    const id = Number(named(row.name, () => insert.run({ ...row, person })).lastInsertRowid);
    if (count === 0) setUsed.run(id, person);
    return tankOf({ ...row, id });
  });
  const remove = db.transaction((person: number, id: number): boolean => {
    const wasUsed = used.get(person) === id;
    if (wasUsed) setUsed.run(null, person);
    if (erase.run(person, id).changes === 0) return false;
    const [only, another] = select.all(person);
    if (wasUsed && only !== undefined && another === undefined) setUsed.run(only.id, person);
    return true;
  });
  return {
    all: (person) => select.all(person).map(tankOf),
    get,
    inUse: (person) => get(person, used.get(person) ?? 0),
    add,
    edit: (person, id, profile) => {
      const row = rowOf(profile);
      const { changes } = named(row.name, () => update.run({ ...row, person, id }));
      return changes === 0 ? undefined : tankOf({ ...row, id });
    },
    use: (person, id) => get(person, id) !== undefined && setUsed.run(id, person).changes === 1,
    remove,
  };
}

function named<T>(name: string, write: () => T): T {
  try {
    return write();
  } catch (error) {
    if (!(error instanceof Error && 'code' in error && error.code === 'SQLITE_CONSTRAINT_UNIQUE'))
      throw error;
    throw new Problem(say('tank.alreadyCalled', { name }), { field: 'name', given: name });
  }
}
