import type Database from 'better-sqlite3';
import { MOST_LIGHT_POINTS, type KeptLightPoint, type NewLightPoint } from '../../commands/placed.ts';
import type { Spot } from '../../core/corals/scene.ts';
import { inRange } from '../../core/problem.ts';
import { quantities } from '../../core/quantity/unit.ts';
import { instant } from './limits.ts';
import { spotColumns, spotRow } from './spot-row.ts';

/** Light measured in the tanks of the person with the key `person`; every other reading does not exist. */
export interface LightPoints {
  /** Oldest first. */
  readonly all: (person: number, tank: number) => readonly KeptLightPoint[];
  /** The tank must be the person's. The oldest beyond `MOST_LIGHT_POINTS` go; returns those added that stayed. */
  readonly add: (person: number, tank: number, points: readonly NewLightPoint[]) => readonly KeptLightPoint[];
  readonly remove: (person: number, tank: number, id: number) => boolean;
}

interface Row extends Spot {
  readonly ppfd: number;
  readonly atMs: number;
}

type Found = Row & { readonly id: number };

export function openLightPoints(db: Database.Database): LightPoints {
  const select = db.prepare<[number, number], Found>(`
    SELECT id, ${spotColumns}, ppfd, at_ms AS atMs FROM light_point
    WHERE person = ? AND tank = ? ORDER BY at_ms, id`);
  const insert = db.prepare<[Row & { person: number; tank: number }]>(`
    INSERT INTO light_point (person, tank, x_cm, y_cm, z_cm, ppfd, at_ms)
    VALUES (@person, @tank, @xCm, @yCm, @zCm, @ppfd, @atMs)`);
  const erase = db.prepare<[number, number, number]>(
    'DELETE FROM light_point WHERE person = ? AND tank = ? AND id = ?',
  );
  const prune = db.prepare<[{ person: number; tank: number; most: number }]>(`
    DELETE FROM light_point WHERE person = @person AND tank = @tank AND id NOT IN (
      SELECT id FROM light_point WHERE person = @person AND tank = @tank ORDER BY at_ms DESC, id DESC LIMIT @most)`);
  const all: LightPoints['all'] = (person, tank) => select.all(person, tank).map(pointOf);
  const add = db.transaction((person: number, tank: number, points: readonly NewLightPoint[]) => {
    const made = new Set(
      points.map((point) => Number(insert.run({ ...rowOf(point), person, tank }).lastInsertRowid)),
    );
    prune.run({ person, tank, most: MOST_LIGHT_POINTS });
    return all(person, tank).filter(({ id }) => made.has(id));
  });
  return { all, add, remove: (person, tank, id) => erase.run(person, tank, id).changes === 1 };
}

function rowOf({ spot, ppfd, atMs }: NewLightPoint): Row {
  const { min, max } = quantities.light;
  return { ...spotRow(spot), ppfd: inRange('light', ppfd, min, max, 'PAR'), atMs: instant(atMs) };
}

function pointOf({ id, xCm, yCm, zCm, ppfd, atMs }: Found): KeptLightPoint {
  return { id, spot: { xCm, yCm, zCm }, ppfd, atMs };
}
