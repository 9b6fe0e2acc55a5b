import type Database from 'better-sqlite3';

/** The terminal room has one person. */
export const LOCAL_PERSON = 'local';

/** Stands for someone of whom nothing is kept: no row has it. */
export const NOBODY = 0;

const validId = /^(?:\d{17,20}|local)$/;

/** Discord ids to the keys that rows carry. */
export interface People {
  readonly keyOf: (discordId: string) => number;
  readonly keyOrNew: (discordId: string) => number;
  readonly sinceMs: (key: number) => number | undefined;
  readonly count: () => number;
}

export function openPeople(db: Database.Database, nowMs: () => number): People {
  const find = db.prepare<[string], number>('SELECT id FROM person WHERE discord_id = ?').pluck();
  const add = db.prepare<[string, number]>('INSERT INTO person (discord_id, created_ms) VALUES (?, ?)');
  const since = db.prepare<[number], number>('SELECT created_ms FROM person WHERE id = ?').pluck();
  const count = db.prepare<[], number>('SELECT count(*) FROM person').pluck();
  return {
    keyOf: (discordId) => find.get(discordId) ?? NOBODY,
    keyOrNew: (discordId) => find.get(discordId) ?? Number(add.run(discordId, nowMs()).lastInsertRowid),
    sinceMs: (key) => since.get(key),
    count: () => count.get() ?? 0,
  };
}

/** @throws Error when it is neither the id of a Discord user nor the terminal room's. */
export function checkPersonId(personId: string): string {
  if (validId.test(personId)) return personId;
  throw new Error('a person is a Discord id or the terminal room');
}
