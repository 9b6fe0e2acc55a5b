import type Database from 'better-sqlite3';
import { MOST_HAND_OVERS, type HandOver, type NewHandOver } from '../../commands/reminder.ts';
import { Problem } from '../../core/problem.ts';
import type { HandOverNews } from '../clock/due.ts';
import { say } from '../../core/wording/say.ts';
import { handOverOf, isOpen, selectHandOver, type FoundHandOver } from './hand-over-row.ts';
import { instant, roomFor } from './limits.ts';
import { checkPersonId, type People } from './people.ts';

/** The hand-overs the person with the key `person` asked for or sits in; every other one does not exist. */
export interface HandOvers {
  /** Newest first. */
  readonly all: (person: number) => readonly HandOver[];
  readonly add: (owner: number, made: NewHandOver) => HandOver;
  readonly answer: (sitter: number, id: number, accept: boolean) => HandOver | undefined;
  readonly end: (person: number, id: number) => boolean;
  /** The accepted one that a reminder of this owner and tank falls under: one of the tank alone first. */
  readonly covering: (owner: number, tank: number | null, nowMs: number) => HandOver | undefined;
  readonly sits: (sitter: number, owner: number, tank: number | null) => boolean;
  /** Anyone's: for the clock loop. */
  readonly find: (id: number) => FoundHandOver | undefined;
  /** With its sitter, when nothing else is kept of them. */
  readonly remove: (found: FoundHandOver) => void;
}

const accepted = `owner = @owner AND state = 'accepted' AND from_ms <= @nowMs AND @nowMs < until_ms
  AND (tank IS NULL OR tank = @tank)`;

interface Asked {
  readonly owner: number;
  readonly tank: number | null;
  readonly nowMs: number;
}
type Written = Asked & { readonly sitter: number; readonly fromMs: number; readonly untilMs: number };

export function openHandOvers(db: Database.Database, people: People, nowMs: () => number): HandOvers {
  const find = db.prepare<[number], FoundHandOver>(`${selectHandOver} WHERE hand_over.id = ?`);
  const select = db.prepare<[number, number], FoundHandOver>(
    `${selectHandOver} WHERE owner = ? OR sitter = ? ORDER BY hand_over.id DESC`,
  );
  const cover = db.prepare<[Asked], FoundHandOver>(
    `${selectHandOver} WHERE ${accepted} ORDER BY tank IS NULL, hand_over.id DESC LIMIT 1`,
  );
  const sits = db
    .prepare<[Asked & { sitter: number }], 1>(
      `SELECT 1 FROM hand_over WHERE sitter = @sitter AND ${accepted}`,
    )
    .pluck();
  const insert = db.prepare<[Written]>(`
    INSERT INTO hand_over (owner, sitter, tank, from_ms, until_ms, state, news, wake_ms)
    VALUES (@owner, @sitter, @tank, @fromMs, @untilMs, 'asked', 'ask the sitter', @nowMs)`);
  const turn = db.prepare<[HandOver['state'], HandOverNews, number, number]>(
    'UPDATE hand_over SET state = ?, news = ?, wake_ms = ?, attempts = 0 WHERE id = ?',
  );
  const erase = db.prepare<[number]>('DELETE FROM hand_over WHERE id = ?');
  const owns = db.prepare<[number, number], 1>('SELECT 1 FROM tank WHERE id = ? AND person = ?').pluck();

  const remove = ({ id, sitter }: FoundHandOver): void => {
    erase.run(id);
    people.forgetEmpty(sitter);
  };
  const add = db.transaction((owner: number, made: NewHandOver): HandOver => {
    const now = nowMs();
    const sitter = people.keyOrNew(checkPersonId(made.sitterId));
    const span = { fromMs: instant(made.fromMs), untilMs: instant(made.untilMs) };
    const tank = made.tankId ?? null;
    if (sitter === owner) throw new Problem(say('schedule.ownSitter'), { field: 'sitter' });
    if (span.untilMs <= Math.max(span.fromMs, now))
      throw new Problem(say('schedule.endNotAfter'), { field: 'until' });
    if (tank !== null && owns.get(tank, owner) !== 1)
      throw new Problem(say('tank.notYours'), { field: 'tank' });
    const open = select.all(owner, owner).filter((found) => found.owner === owner && isOpen(found, now));
    roomFor('hand-over', open.length + 1, MOST_HAND_OVERS, 'log.roomForHandOvers');
    const { lastInsertRowid } = insert.run({ owner, sitter, tank, nowMs: now, ...span });
    return handOverOf(known(find.get(Number(lastInsertRowid))), now);
  });
  const answer = db.transaction((sitter: number, id: number, accept: boolean): HandOver | undefined => {
    const found = find.get(id);
    if (found?.sitter !== sitter || found.state !== 'asked' || !isOpen(found, nowMs())) return undefined;
    const state = accept ? 'accepted' : 'declined';
    turn.run(state, state, nowMs(), id);
    return handOverOf({ ...found, state }, nowMs());
  });
  const end = db.transaction((person: number, id: number): boolean => {
    const found = find.get(id);
    if (found === undefined || (found.owner !== person && found.sitter !== person)) return false;
    if (!isOpen(found, nowMs())) return false;
    if (found.news === 'ask the sitter' && found.attempts === 0) remove(found);
    else turn.run('over', 'ended', nowMs(), id);
    return true;
  });
  return {
    all: (person) => select.all(person, person).map((found) => handOverOf(found, nowMs())),
    add,
    answer,
    end,
    covering: (owner, tank, now) => {
      const found = cover.get({ owner, tank, nowMs: now });
      return found && handOverOf(found, now);
    },
    sits: (sitter, owner, tank) => sits.get({ sitter, owner, tank, nowMs: nowMs() }) === 1,
    find: (id) => find.get(id),
    remove,
  };
}

function known<T>(row: T | undefined): T {
  if (row === undefined) throw new Error('a row just written is not there');
  return row;
}
