import type Database from 'better-sqlite3';
import { HELD_DAYS } from '../../commands/held.ts';
import { checkPersonId } from './people.ts';

/** What a button stands for, under the id it carries. */
export interface Held {
  readonly id: string;
  readonly personId: string;
  /** Nobody else may open it. */
  readonly isPrivate: boolean;
  readonly kind: 'answer' | 'call';
  /** JSON of its reader's own making. */
  readonly body: string;
}

export interface KeptHeld extends Held {
  readonly madeMs: number;
}

/** What buttons stand for; what is over does not exist. */
export interface HeldBodies {
  readonly hold: (held: Held) => void;
  /** Undefined, too, for anybody but its own person where it is private. */
  readonly find: (id: string, kind: Held['kind'], personId: string) => Held | undefined;
  /** The latest first. */
  readonly all: (personId: string) => readonly KeptHeld[];
  readonly erase: (personId: string) => void;
  readonly forgetOver: () => void;
}

const KEPT_MS = HELD_DAYS * 24 * 60 * 60 * 1000;
/** Of one person, the latest. */
export const MOST_HELD = 500;

type Row = Omit<KeptHeld, 'isPrivate'> & { readonly isPrivate: 0 | 1 };

const columns = 'id, person_id AS personId, made_ms AS madeMs, is_private AS isPrivate, kind, body';

export function openHeld(db: Database.Database, nowMs: () => number): HeldBodies {
  const insert = db.prepare<[Row]>(`
    INSERT INTO held (id, person_id, made_ms, is_private, kind, body)
    VALUES (@id, @personId, @madeMs, @isPrivate, @kind, @body)`);
  const trim = db.prepare<[{ personId: string }]>(`
    DELETE FROM held WHERE id IN
      (SELECT id FROM held WHERE person_id = @personId
        ORDER BY made_ms DESC, rowid DESC LIMIT -1 OFFSET ${MOST_HELD})`);
  const find = db.prepare<[{ id: string; kind: string; personId: string; sinceMs: number }], Row>(`
    SELECT ${columns} FROM held WHERE id = @id AND kind = @kind AND made_ms >= @sinceMs
      AND (is_private = 0 OR person_id = @personId)`);
  const select = db.prepare<[string, number], Row>(`
    SELECT ${columns} FROM held WHERE person_id = ? AND made_ms >= ? ORDER BY made_ms DESC, rowid DESC`);
  const erase = db.prepare<[string]>('DELETE FROM held WHERE person_id = ?');
  const eraseOver = db.prepare<[number]>('DELETE FROM held WHERE made_ms < ?');
  const sinceMs = (): number => nowMs() - KEPT_MS;

  const hold = db.transaction((held: Held): void => {
    const personId = checkPersonId(held.personId);
    insert.run({ ...held, madeMs: nowMs(), isPrivate: held.isPrivate ? 1 : 0 });
    trim.run({ personId });
  });
  return {
    hold,
    find: (id, kind, personId) => heldOf(find.get({ id, kind, personId, sinceMs: sinceMs() })),
    all: (personId) => select.all(personId, sinceMs()).flatMap((row) => heldOf(row) ?? []),
    erase: (personId) => void erase.run(personId),
    forgetOver: () => void eraseOver.run(sinceMs()),
  };
}

function heldOf(row: Row | undefined): KeptHeld | undefined {
  return row && { ...row, isPrivate: row.isPrivate === 1 };
}
