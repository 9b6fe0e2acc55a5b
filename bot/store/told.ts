import type Database from 'better-sqlite3';
import { MOST_TOLD, TOLD_DAYS, type Told } from '../../commands/told.ts';
import { caseSchema, type Case } from '../../core/language/case.ts';
import type { LastingCases } from '../talks.ts';
import { checkPersonId, type People } from './people.ts';

/** Cases of threads and posts; one that is over, or no longer fits the schema of a case, does not exist. */
export interface ToldCases extends LastingCases {
  /** The latest first. */
  readonly all: (person: number) => readonly Told[];
  /** Removes what is over, with people of whom nothing else is kept. */
  readonly forgetOver: () => void;
}

interface Row {
  readonly place: string;
  readonly atMs: number;
  readonly told: string;
}

const KEPT_MS = TOLD_DAYS * 24 * 60 * 60 * 1000;
const columns = 'place, at_ms AS atMs, told';

export function openTold(db: Database.Database, people: People, nowMs: () => number): ToldCases {
  const find = db.prepare<[{ person: number; place: string; sinceMs: number }], Row>(`
    SELECT ${columns} FROM told WHERE person = @person AND at_ms >= @sinceMs AND (place = @place OR asked = @place)`);
  const select = db.prepare<[number, number], Row>(
    `SELECT ${columns} FROM told WHERE person = ? AND at_ms >= ? ORDER BY at_ms DESC, place`,
  );
  const insert = db.prepare<[number, string, number, string]>(`
    INSERT INTO told (person, place, at_ms, told) VALUES (?, ?, ?, ?)
    ON CONFLICT (person, place) DO UPDATE SET at_ms = excluded.at_ms, told = excluded.told, asked = NULL`);
  const trim = db.prepare<[{ person: number }]>(`
    DELETE FROM told WHERE person = @person AND place IN
      (SELECT place FROM told WHERE person = @person ORDER BY at_ms DESC, place LIMIT -1 OFFSET ${MOST_TOLD})`);
  const ask = db.prepare<[string, number, string]>(
    'UPDATE told SET asked = ? WHERE person = ? AND place = ?',
  );
  const erase = db.prepare<[number, string]>('DELETE FROM told WHERE person = ? AND place = ?');
  const eraseOver = db.prepare<[number], number>('DELETE FROM told WHERE at_ms < ? RETURNING person').pluck();
  const sinceMs = (): number => nowMs() - KEPT_MS;

  const toldOf = (person: number, { place, atMs, told }: Row): Told | undefined => {
    const read = caseSchema.safeParse(JSON.parse(told));
    if (read.success) return { place, atMs, told: read.data };
    erase.run(person, place);
    return undefined;
  };
  const put = db.transaction((personId: string, place: string, told: Case): void => {
    const person = people.keyOrNew(checkPersonId(personId));
    insert.run(person, place, nowMs(), JSON.stringify(told));
    trim.run({ person });
  });
  const drop = db.transaction((personId: string, place: string): void => {
    const person = people.keyOf(personId);
    if (erase.run(person, place).changes === 1) people.forgetEmpty(person);
  });
  return {
    find: (personId, place) => {
      const person = people.keyOf(personId);
      const row = find.get({ person, place, sinceMs: sinceMs() });
      return row && toldOf(person, row)?.told;
    },
    put,
    drop,
    asked: (personId, place, askedId) => void ask.run(askedId, people.keyOf(personId), place),
    all: (person) => select.all(person, sinceMs()).flatMap((row) => toldOf(person, row) ?? []),
    forgetOver: db.transaction((): void => {
      for (const person of new Set(eraseOver.all(sinceMs()))) people.forgetEmpty(person);
    }),
  };
}
