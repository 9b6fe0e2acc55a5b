import type Database from 'better-sqlite3';
import type { Reading, ReadingQuery } from '../../commands/keep.ts';
import { allCodes, parameterCode, parameterOf } from './parameter-code.ts';

/** The readings of the person with the key `person`; every other reading does not exist. */
export interface Readings {
  readonly select: (person: number, tank: number, query: ReadingQuery) => readonly Reading[];
  readonly latest: (person: number, tank: number) => readonly Reading[];
}

interface Row {
  readonly parameter: number;
  readonly atMs: number;
  readonly entry: number;
  readonly value: number;
  readonly note: string | null;
}
type Newest = [person: number, tank: number, parameter: number, fromMs: number, toMs: number, most: number];

const NO_LIMIT = -1;

export function openReadings(db: Database.Database): Readings {
  /**
   * One parameter at a time: so the newest few are found without reading the rest. Few entries have a note, and the
   * index of those that do is small: entries are not read but for their note.
   */
  const newest = db.prepare<Newest, Row>(`
    SELECT r.parameter, r.at_ms AS atMs, r.entry, r.value, e.note
    FROM reading AS r LEFT JOIN entry AS e INDEXED BY entry_note
      ON e.tank = r.tank AND e.id = r.entry AND e.note IS NOT NULL
    WHERE r.person = ? AND r.tank = ? AND r.parameter = ? AND r.at_ms BETWEEN ? AND ?
    ORDER BY r.at_ms DESC, r.entry DESC LIMIT ?`);
  const forever = [Number.MIN_SAFE_INTEGER, Number.MAX_SAFE_INTEGER] as const;
  return {
    select: (person, tank, { parameter, fromMs, toMs, most = NO_LIMIT }) => {
      const codes = parameter === undefined ? allCodes : [parameterCode[parameter]];
      const [from, to] = [fromMs ?? forever[0], toMs ?? forever[1]];
      const rows = codes.flatMap((code) => newest.all(person, tank, code, from, to, most)).sort(oldestFirst);
      return (most === NO_LIMIT ? rows : rows.slice(Math.max(0, rows.length - most))).map(readingOf);
    },
    latest: (person, tank) =>
      allCodes.flatMap((code) => newest.all(person, tank, code, ...forever, 1)).map(readingOf),
  };
}

function oldestFirst(a: Row, b: Row): number {
  return a.atMs - b.atMs || a.entry - b.entry || a.parameter - b.parameter;
}

function readingOf({ parameter, atMs, value, note }: Row): Reading {
  return { parameter: parameterOf(parameter), atMs, value, note: note ?? undefined };
}
