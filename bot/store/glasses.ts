import type Database from 'better-sqlite3';
import type { Glass } from '../../commands/placed.ts';
import type { FlowDirection } from '../../core/corals/scene.ts';
import { length } from './limits.ts';

/** The inside of the tanks of the person with the key `person`; every other tank does not exist. */
export interface Glasses {
  readonly get: (person: number, tank: number) => Glass;
  readonly set: (person: number, tank: number, glass: Glass) => boolean;
}

interface Row {
  readonly lengthCm: number | null;
  readonly widthCm: number | null;
  readonly heightCm: number | null;
  readonly flow: string | null;
}

export function openGlasses(db: Database.Database): Glasses {
  const find = db.prepare<[number, number], Row>(`
    SELECT length_cm AS lengthCm, width_cm AS widthCm, height_cm AS heightCm, flow FROM tank
    WHERE person = ? AND id = ?`);
  const update = db.prepare<[Row & { person: number; tank: number }]>(`
    UPDATE tank SET length_cm = @lengthCm, width_cm = @widthCm, height_cm = @heightCm, flow = @flow
    WHERE person = @person AND id = @tank`);
  return {
    get: (person, tank) => glassOf(find.get(person, tank)),
    set: (person, tank, glass) => update.run({ ...rowOf(glass), person, tank }).changes === 1,
  };
}

function rowOf({ box, flow }: Glass): Row {
  return {
    lengthCm: box === undefined ? null : length('length', box.lengthCm),
    widthCm: box === undefined ? null : length('width', box.widthCm),
    heightCm: box === undefined ? null : length('height', box.heightCm),
    flow: flow ?? null,
  };
}

function glassOf(row: Row | undefined): Glass {
  if (row === undefined) return {};
  const { lengthCm, widthCm, heightCm } = row;
  const known = lengthCm !== null && widthCm !== null && heightCm !== null;
  return {
    box: known ? { lengthCm, widthCm, heightCm } : undefined,
    flow: (row.flow ?? undefined) as FlowDirection | undefined,
  };
}
