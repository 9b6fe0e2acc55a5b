import type Database from 'better-sqlite3';
import type { ChosenUnits } from '../../core/quantity/chosen-units.ts';
import { zoneName } from './limits.ts';

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
  readonly zone: (key: number) => string | undefined;
  readonly setZone: (key: number, zone: string) => void;
  /** The units somebody chose, none where they chose none. */
  readonly units: (key: number) => ChosenUnits;
  readonly setUnits: (key: number, units: ChosenUnits) => void;
  /** BCP 47 tag. */
  readonly locale: (key: number) => string | undefined;
  readonly setLocale: (key: number, locale: string) => void;
  /** Removes someone of whom nothing is kept any more: a sitter, a helper or a talk when that is over. Whether it did. */
  readonly forgetEmpty: (key: number) => boolean;
  readonly count: () => number;
}

export function openPeople(db: Database.Database, nowMs: () => number): People {
  const find = db.prepare<[string], number>('SELECT id FROM person WHERE discord_id = ?').pluck();
  const add = db.prepare<[string, number]>('INSERT INTO person (discord_id, created_ms) VALUES (?, ?)');
  const since = db.prepare<[number], number>('SELECT created_ms FROM person WHERE id = ?').pluck();
  const zone = db.prepare<[number], string | null>('SELECT zone FROM person WHERE id = ?').pluck();
  const setZone = db.prepare<[string, number]>('UPDATE person SET zone = ? WHERE id = ?');
  const units = db.prepare<[number], string | null>('SELECT units FROM person WHERE id = ?').pluck();
  const setUnits = db.prepare<[string, number]>('UPDATE person SET units = ? WHERE id = ?');
  const locale = db.prepare<[number], string | null>('SELECT locale FROM person WHERE id = ?').pluck();
  const setLocale = db.prepare<[string, number, string]>(
    'UPDATE person SET locale = ? WHERE id = ? AND locale IS NOT ?',
  );
  const forgetEmpty = db.prepare<[number]>(`
    DELETE FROM person WHERE id = ? AND zone IS NULL AND units IS NULL
      AND NOT EXISTS (SELECT 1 FROM tank WHERE tank.person = person.id)
      AND NOT EXISTS (SELECT 1 FROM reminder WHERE reminder.person = person.id)
      AND NOT EXISTS (SELECT 1 FROM hand_over WHERE hand_over.owner = person.id)
      AND NOT EXISTS (SELECT 1 FROM hand_over WHERE hand_over.sitter = person.id)
      AND NOT EXISTS (SELECT 1 FROM shown_tank WHERE shown_tank.helper = person.id)
      AND NOT EXISTS (SELECT 1 FROM told WHERE told.person = person.id)
      AND NOT EXISTS (SELECT 1 FROM notice WHERE notice.person = person.id)`);
  const count = db.prepare<[], number>('SELECT count(*) FROM person').pluck();
  return {
    keyOf: (discordId) => find.get(discordId) ?? NOBODY,
    keyOrNew: (discordId) => find.get(discordId) ?? Number(add.run(discordId, nowMs()).lastInsertRowid),
    sinceMs: (key) => since.get(key),
    zone: (key) => zone.get(key) ?? undefined,
    setZone: (key, name) => void setZone.run(zoneName(name), key),
    units: (key) => JSON.parse(units.get(key) ?? '{}') as ChosenUnits,
    setUnits: (key, chosen) => void setUnits.run(JSON.stringify(chosen), key),
    locale: (key) => locale.get(key) ?? undefined,
    setLocale: (key, tag) => void setLocale.run(tag, key, tag),
    forgetEmpty: (key) => forgetEmpty.run(key).changes === 1,
    count: () => count.get() ?? 0,
  };
}

/** @throws Error when it is neither the id of a Discord user nor the terminal room's. */
export function checkPersonId(personId: string): string {
  if (validId.test(personId)) return personId;
  throw new Error('a person is a Discord id or the terminal room');
}
