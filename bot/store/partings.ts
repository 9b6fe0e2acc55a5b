import type Database from 'better-sqlite3';
import { say } from '../../core/wording/say.ts';
import type { Tables } from './tables.ts';

/**
 * What becomes of a hand-over when its tank, its owner or its sitter goes, and who is told of it; and of those to whom a
 * tank was shown.
 */
export interface Partings {
  readonly removeTank: (person: number, tank: number) => boolean;
  /** Removes the person; owners get their reminders back, sitters and helpers of whom nothing else is kept go too. */
  readonly removePerson: (person: number, discordId: string) => void;
}

interface Sat {
  readonly sitter: number;
  readonly isOpen: 0 | 1;
}

export function openPartings(
  db: Database.Database,
  { people, tanks, held, notices }: Pick<Tables, 'people' | 'tanks' | 'held' | 'notices'>,
  nowMs: () => number,
): Partings {
  const isOpen = `state IN ('asked', 'accepted') AND @nowMs < until_ms`;
  const owners = db
    .prepare<[{ person: number; nowMs: number }], number>(
      `SELECT DISTINCT owner FROM hand_over WHERE sitter = @person AND ${isOpen}`,
    )
    .pluck();
  const sitters = db.prepare<[{ person: number; tank: number | null; nowMs: number }], Sat>(`
    SELECT sitter, max(state = 'accepted' AND @nowMs < until_ms) AS isOpen FROM hand_over
    WHERE owner = @person AND (@tank IS NULL OR tank = @tank) GROUP BY sitter`);
  const helpers = db
    .prepare<[{ person: number; tank: number | null }], number>(
      'SELECT DISTINCT helper FROM shown_tank WHERE owner = @person AND (@tank IS NULL OR tank = @tank)',
    )
    .pluck();
  const erase = db.prepare<[number]>('DELETE FROM person WHERE id = ?');
  const part = (left: readonly Sat[]): void => {
    for (const sat of left)
      if (!people.forgetEmpty(sat.sitter) && sat.isOpen === 1)
        notices.add(sat.sitter, say('schedule.ownerGone'));
  };
  return {
    removeTank: db.transaction((person: number, tank: number): boolean => {
      const left = sitters.all({ person, tank, nowMs: nowMs() });
      const shownTo = helpers.all({ person, tank });
      const isGone = tanks.remove(person, tank);
      if (isGone) part(left);
      if (isGone) shownTo.forEach(people.forgetEmpty);
      return isGone;
    }),
    removePerson: db.transaction((person: number, discordId: string): void => {
      const left = sitters.all({ person, tank: null, nowMs: nowMs() });
      for (const owner of owners.all({ person, nowMs: nowMs() }))
        notices.add(owner, say('schedule.sitterGone'));
      const shownTo = helpers.all({ person, tank: null });
      notices.take(discordId);
      held.erase(discordId);
      erase.run(person);
      part(left);
      shownTo.forEach(people.forgetEmpty);
    }),
  };
}
