import type Database from 'better-sqlite3';
import { MOST_NAME_LETTERS } from '../../commands/keep.ts';
import { MOST_CORALS, type NewPlacing, type Placing } from '../../commands/placed.ts';
import { coralById } from '../../core/corals/coral-list.ts';
import type { Origin, Spot } from '../../core/corals/scene.ts';
import { Problem } from '../../core/problem.ts';
import { say } from '../../core/wording/say.ts';
import { isoDate, length, roomFor, shortEnough } from './limits.ts';
import { spotColumns, spotRow } from './spot-row.ts';

/** The corals in the tanks of the person with the key `person`; every other coral does not exist. */
export interface Corals {
  readonly all: (person: number, tank: number) => readonly Placing[];
  /** The tank must be the person's. */
  readonly add: (person: number, tank: number, placing: NewPlacing) => Placing;
  readonly change: (person: number, tank: number, id: number, placing: NewPlacing) => Placing | undefined;
  readonly remove: (person: number, tank: number, id: number) => boolean;
}

interface Row extends Spot {
  readonly coralId: string;
  readonly label: string | null;
  readonly rough: number;
  readonly diameterCm: number;
  readonly origin: string;
  readonly since: string | null;
}

type Found = Row & { readonly id: number };

export function openCorals(db: Database.Database): Corals {
  const select = db.prepare<[number, number], Found>(`
    SELECT id, kind AS coralId, label, ${spotColumns}, rough, diameter_cm AS diameterCm, origin, since FROM coral
    WHERE person = ? AND tank = ? ORDER BY id`);
  const insert = db.prepare<[Row & { person: number; tank: number }]>(`
    INSERT INTO coral (person, tank, kind, label, x_cm, y_cm, z_cm, rough, diameter_cm, origin, since)
    VALUES (@person, @tank, @coralId, @label, @xCm, @yCm, @zCm, @rough, @diameterCm, @origin, @since)`);
  const update = db.prepare<[Found & { person: number; tank: number }]>(`
    UPDATE coral SET kind = @coralId, label = @label, x_cm = @xCm, y_cm = @yCm, z_cm = @zCm, rough = @rough,
      diameter_cm = @diameterCm, origin = @origin, since = @since
    WHERE person = @person AND tank = @tank AND id = @id`);
  const erase = db.prepare<[number, number, number]>(
    'DELETE FROM coral WHERE person = ? AND tank = ? AND id = ?',
  );
  const add = db.transaction((person: number, tank: number, placing: NewPlacing): Placing => {
    roomFor('coral', select.all(person, tank).length + 1, MOST_CORALS, 'log.roomForCorals');
    const row = rowOf(placing);
    return placingOf({ ...row, id: Number(insert.run({ ...row, person, tank }).lastInsertRowid) });
  });
  return {
    all: (person, tank) => select.all(person, tank).map(placingOf),
    add,
    change: (person, tank, id, placing) => {
      const row = { ...rowOf(placing), id };
      return update.run({ ...row, person, tank }).changes === 0 ? undefined : placingOf(row);
    },
    remove: (person, tank, id) => erase.run(person, tank, id).changes === 1,
  };
}

function rowOf({ coralId, label, spot, rough, diameterCm, origin, since }: NewPlacing): Row {
  if (coralById(coralId) === undefined)
    throw new Problem(say('coral.unknownId'), { field: 'coral', given: coralId });
  return {
    coralId,
    label: label === undefined ? null : shortEnough('label', label, MOST_NAME_LETTERS),
    ...spotRow(spot),
    rough: rough ? 1 : 0,
    diameterCm: length('size', diameterCm),
    origin,
    since: since === undefined ? null : isoDate('since', since),
  };
}

function placingOf({ xCm, yCm, zCm, ...row }: Found): Placing {
  return {
    ...row,
    label: row.label ?? undefined,
    spot: { xCm, yCm, zCm },
    rough: row.rough === 1,
    origin: row.origin as Origin,
    since: row.since ?? undefined,
  };
}
