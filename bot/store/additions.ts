import type Database from 'better-sqlite3';
import type { Addition, NewAddition, TimeRange } from '../../commands/keep.ts';
import type { ParameterId } from '../../core/water/parameter.ts';
import { parameter as parameterById } from '../../core/water/parameter.ts';
import { inRange } from '../../core/problem.ts';
import { quantities } from '../../core/quantity/unit.ts';
import { instant, MOST_ADDITIONS, MOST_COMPOUND_LETTERS, roomFor, sensible, shortEnough } from './limits.ts';
import { parameterCode, parameterOf } from './parameter-code.ts';

/** What was added to the tanks of the person with the key `person`; every other addition does not exist. */
export interface Additions {
  /** The tank must be the person's. */
  readonly add: (person: number, tank: number, addition: NewAddition) => Addition;
  readonly remove: (person: number, tank: number, id: number) => boolean;
  readonly select: (person: number, tank: number, range: TimeRange) => readonly Addition[];
}

interface Row {
  readonly atMs: number;
  readonly parameter: number;
  readonly rise: number;
  readonly compound: string | null;
  readonly massG: number | null;
}

export function openAdditions(db: Database.Database): Additions {
  const insert = db.prepare<[Row & { person: number; tank: number }]>(`
    INSERT INTO addition (person, tank, at_ms, parameter, rise, compound, mass_g)
    VALUES (@person, @tank, @atMs, @parameter, @rise, @compound, @massG)`);
  const count = db
    .prepare<[number], number>(
      'SELECT count(*) FROM addition WHERE tank IN (SELECT id FROM tank WHERE person = ?)',
    )
    .pluck();
  const select = db.prepare<[number, number, number, number], Row & { id: number }>(`
    SELECT id, at_ms AS atMs, parameter, rise, compound, mass_g AS massG FROM addition
    WHERE person = ? AND tank = ? AND at_ms BETWEEN ? AND ? ORDER BY at_ms, id`);
  const erase = db.prepare<[number, number, number]>(
    'DELETE FROM addition WHERE person = ? AND tank = ? AND id = ?',
  );
  const add = db.transaction((person: number, tank: number, addition: NewAddition): Addition => {
    roomFor('addition', (count.get(person) ?? 0) + 1, MOST_ADDITIONS, 'log.roomForAdditions');
    const row = rowOf(addition);
    return additionOf({ ...row, id: Number(insert.run({ ...row, person, tank }).lastInsertRowid) });
  });
  return {
    add,
    remove: (person, tank, id) => erase.run(person, tank, id).changes === 1,
    select: (person, tank, { fromMs = Number.MIN_SAFE_INTEGER, toMs = Number.MAX_SAFE_INTEGER }) =>
      select.all(person, tank, fromMs, toMs).map(additionOf),
  };
}

function rowOf({ atMs, compound, massG, parameter, rise }: NewAddition): Row {
  const { label, unit } = parameterById(parameter);
  return {
    atMs: instant(atMs),
    parameter: parameterCode[parameter],
    rise: sensible(label, rise, unit),
    compound: compound === undefined ? null : shortEnough('compound', compound, MOST_COMPOUND_LETTERS),
    massG: massG === undefined ? null : inRange('amount', massG, 0, quantities.mass.max, 'g'),
  };
}

function additionOf({ parameter, compound, massG, ...row }: Row & { id: number }): Addition {
  return {
    ...row,
    parameter: parameterOf(parameter) as ParameterId,
    compound: compound ?? undefined,
    massG: massG ?? undefined,
  };
}
