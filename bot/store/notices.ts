import type Database from 'better-sqlite3';

/** Notices one member can have waiting; the oldest make room. */
export const MOST_NOTICES = 20;

/** Sentences that a member has not seen yet. */
export interface Notices {
  readonly add: (person: number, text: string) => void;
  /** Oldest first; they are gone then. Costs no query for those who have none. */
  readonly take: (discordId: string) => readonly string[];
  /** Oldest first. */
  readonly all: (person: number) => readonly Notice[];
}

export interface Notice {
  readonly text: string;
  readonly madeMs: number;
}

export function openNotices(db: Database.Database, nowMs: () => number): Notices {
  const insert = db.prepare<[number, string, number]>(
    'INSERT OR IGNORE INTO notice (person, text, made_ms) VALUES (?, ?, ?)',
  );
  const trim = db.prepare<[number, number]>(`
    DELETE FROM notice WHERE id IN (SELECT id FROM notice WHERE person = ? ORDER BY id DESC LIMIT -1 OFFSET ?)`);
  const idOf = db.prepare<[number], string>('SELECT discord_id FROM person WHERE id = ?').pluck();
  const select = db.prepare<[number], Notice>(
    'SELECT text, made_ms AS madeMs FROM notice WHERE person = ? ORDER BY id',
  );
  const remove = db.prepare<[string], { id: number; text: string }>(
    'DELETE FROM notice WHERE person = (SELECT id FROM person WHERE discord_id = ?) RETURNING id, text',
  );
  const everyone = 'SELECT DISTINCT discord_id FROM notice JOIN person ON person.id = notice.person';
  const waiting = new Set(db.prepare<[], string>(everyone).pluck().all());

  return {
    add: (person, text) => {
      const discordId = idOf.get(person);
      if (discordId === undefined) return;
      insert.run(person, text, nowMs());
      trim.run(person, MOST_NOTICES);
      waiting.add(discordId);
    },
    take: (discordId) => {
      if (!waiting.has(discordId)) return [];
      const taken = remove.all(discordId).sort((a, b) => a.id - b.id);
      waiting.delete(discordId);
      return taken.map(({ text }) => text);
    },
    all: (person) => select.all(person),
  };
}
