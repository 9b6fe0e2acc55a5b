import type Database from 'better-sqlite3';
import type { Entry, LoggedValue, NewEntry } from '../../commands/keep.ts';
import { Problem } from '../../core/problem.ts';
import { parameter } from '../../core/water/parameter.ts';
import { say } from '../../core/wording/say.ts';
import { instant, MOST_NOTE_LETTERS, MOST_READINGS, roomFor, sensible, shortEnough } from './limits.ts';
import { allCodes, parameterCode, parameterOf } from './parameter-code.ts';

/** What was tested at one time, of the person with the key `person`; every other entry does not exist. */
export interface Entries {
  /** The tank must be the person's. */
  readonly add: (person: number, tank: number, entries: readonly NewEntry[]) => readonly Entry[];
  readonly last: (person: number, tank: number) => Entry | undefined;
  readonly remove: (person: number, tank: number, id: number) => boolean;
  /** In the order they were made. */
  readonly all: (person: number, tank: number) => readonly Entry[];
}

interface EntryRow {
  readonly id: number;
  readonly atMs: number;
  readonly madeMs: number;
  readonly note: string | null;
}
interface ValueRow {
  readonly entry: number;
  readonly parameter: number;
  readonly value: number;
}

const columns = 'id, at_ms AS atMs, made_ms AS madeMs, note';
/** A reading's key begins with tank, parameter and time: with the parameters listed it is found without a search. */
const ofEntry = `person = ? AND tank = ? AND parameter IN (${allCodes.join()}) AND at_ms = ? AND entry = ?`;

type OfEntry = [person: number, tank: number, atMs: number, entry: number];

export function openEntries(db: Database.Database, nowMs: () => number): Entries {
  const insert = db.prepare<[number, number, number, number, string | null]>(
    'INSERT INTO entry (person, tank, at_ms, made_ms, note) VALUES (?, ?, ?, ?, ?)',
  );
  const insertReading = db.prepare<[number, number, number, number, number, number]>(
    'INSERT INTO reading (person, tank, parameter, at_ms, entry, value) VALUES (?, ?, ?, ?, ?, ?)',
  );
  const count = db
    .prepare<[number], number>(
      'SELECT count(*) FROM reading WHERE tank IN (SELECT id FROM tank WHERE person = ?)',
    )
    .pluck();
  const newest = db.prepare<[number, number], EntryRow>(
    `SELECT ${columns} FROM entry WHERE person = ? AND tank = ? ORDER BY id DESC LIMIT 1`,
  );
  const find = db.prepare<[number, number, number], EntryRow>(
    `SELECT ${columns} FROM entry WHERE person = ? AND tank = ? AND id = ?`,
  );
  const select = db.prepare<[number, number], EntryRow>(
    `SELECT ${columns} FROM entry WHERE person = ? AND tank = ? ORDER BY id`,
  );
  const values = db.prepare<OfEntry, ValueRow>(
    `SELECT entry, parameter, value FROM reading WHERE ${ofEntry} ORDER BY parameter`,
  );
  const allValues = db.prepare<[number, number], ValueRow>(
    'SELECT entry, parameter, value FROM reading WHERE person = ? AND tank = ?',
  );
  const eraseReadings = db.prepare<OfEntry>(`DELETE FROM reading WHERE ${ofEntry}`);
  const erase = db.prepare<[number, number]>('DELETE FROM entry WHERE person = ? AND id = ?');

  const addOne = (person: number, tank: number, entry: NewEntry): Entry => {
    const madeMs = nowMs();
    const { atMs, note } = entry;
    const id = Number(insert.run(person, tank, atMs, madeMs, note ?? null).lastInsertRowid);
    for (const { parameter: of, value } of entry.values)
      insertReading.run(person, tank, parameterCode[of], atMs, id, value);
    return { ...entry, id, madeMs };
  };
  const add = db.transaction((person: number, tank: number, entries: readonly NewEntry[]) => {
    const checked = entries.map(check);
    const added = checked.reduce((sum, entry) => sum + entry.values.length, 0);
    roomFor('reading', (count.get(person) ?? 0) + added, MOST_READINGS, 'log.roomForReadings');
    return checked.map((entry) => addOne(person, tank, entry));
  });
  const remove = db.transaction((person: number, tank: number, id: number): boolean => {
    const row = find.get(person, tank, id);
    if (row === undefined) return false;
    eraseReadings.run(person, tank, row.atMs, id);
    return erase.run(person, id).changes === 1;
  });
  return {
    add,
    remove,
    last: (person, tank) => {
      const row = newest.get(person, tank);
      return row && entryOf(row, values.all(person, tank, row.atMs, row.id));
    },
    all: (person, tank) => {
      const byEntry = new Map<number, ValueRow[]>();
      for (const row of allValues.all(person, tank)) {
        const others = byEntry.get(row.entry);
        if (others === undefined) byEntry.set(row.entry, [row]);
        else others.push(row);
      }
      return select.all(person, tank).map((row) => entryOf(row, byEntry.get(row.id) ?? []));
    },
  };
}

function entryOf({ note, ...row }: EntryRow, values: readonly ValueRow[]): Entry {
  const logged = values.map(({ parameter: code, value }) => ({ parameter: parameterOf(code), value }));
  return { ...row, note: note ?? undefined, values: logged };
}

function check({ atMs, note, values }: NewEntry): NewEntry {
  if (values.length === 0) throw new Problem(say('log.nothingToKeep'), { field: 'reading' });
  const twice = values.find((one, i) => values.findIndex((other) => other.parameter === one.parameter) < i);
  if (twice !== undefined) {
    const { label } = parameter(twice.parameter);
    throw new Problem(say('log.twoValues', { parameter: label }), {
      field: label,
      limit: say('log.limitOneValue'),
    });
  }
  return {
    atMs: instant(atMs),
    note: note === undefined ? undefined : shortEnough('note', note, MOST_NOTE_LETTERS),
    values: values.map(checkValue),
  };
}

function checkValue({ parameter: id, value }: LoggedValue): LoggedValue {
  const { label, unit } = parameter(id);
  return { parameter: id, value: sensible(label, value, unit) };
}
