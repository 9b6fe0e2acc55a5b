import type Database from 'better-sqlite3';
import type { Watch } from '../../commands/watch.ts';
import { parameter as parameterById, type ParameterId } from '../../core/water/parameter.ts';
import { sensible } from './limits.ts';
import { parameterCode, parameterOf } from './parameter-code.ts';

/** Borders set for the tanks of the person with the key `person`; every other one does not exist. */
export interface Watches {
  readonly all: (person: number, tank: number) => readonly Watch[];
  /** The tank must be the person's. */
  readonly set: (person: number, tank: number, watch: Watch) => void;
  readonly remove: (person: number, tank: number, parameter: ParameterId) => boolean;
}

interface Row {
  readonly parameter: number;
  readonly over: number | null;
  readonly under: number | null;
}

export function openWatches(db: Database.Database): Watches {
  const select = db.prepare<[number, number], Row>(
    'SELECT parameter, over, under FROM watch WHERE person = ? AND tank = ? ORDER BY parameter',
  );
  const put = db.prepare<[Row & { person: number; tank: number }]>(`
    INSERT INTO watch (person, tank, parameter, over, under) VALUES (@person, @tank, @parameter, @over, @under)
    ON CONFLICT (tank, parameter) DO UPDATE SET over = excluded.over, under = excluded.under`);
  const erase = db.prepare<[number, number, number]>(
    'DELETE FROM watch WHERE person = ? AND tank = ? AND parameter = ?',
  );
  return {
    all: (person, tank) => select.all(person, tank).map(watchOf),
    set: (person, tank, watch) => void put.run({ ...rowOf(watch), person, tank }),
    remove: (person, tank, parameter) => erase.run(person, tank, parameterCode[parameter]).changes === 1,
  };
}

function rowOf({ parameter, over, under }: Watch): Row {
  const { label, unit } = parameterById(parameter);
  const border = (value: number | undefined): number | null =>
    value === undefined ? null : sensible(label, value, unit);
  return { parameter: parameterCode[parameter], over: border(over), under: border(under) };
}

function watchOf({ parameter, over, under }: Row): Watch {
  return { parameter: parameterOf(parameter), over: over ?? undefined, under: under ?? undefined };
}
