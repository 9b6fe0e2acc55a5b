import type { Talk } from '../commands/ask/talk.ts';
import { openShortMemory } from './short-memory.ts';

/** Talks remembered at once, the latest: in memory only. */
const MOST_TALKS = 5000;

/** A talk that can be gone on with from another place too, such as the message of its answer. */
export interface PlacedTalk extends Talk {
  readonly alsoAt: (place: string) => void;
}

/**
 * What members asked in the last quarter of an hour: each one's own, by place, gone with the process. What is older goes
 * with the next question of anyone.
 */
export interface Talks {
  /** The talk of one person at the first of these places where there is one; it goes on at the last. */
  readonly talkOf: (personId: string, places: readonly string[]) => PlacedTalk;
}

export function openTalks(nowMs: () => number): Talks {
  const questions = openShortMemory<string>(nowMs, MOST_TALKS);
  return {
    talkOf: (personId, places) => {
      const keys = places.map((place) => `${personId} ${place}`);
      let asked: string | undefined;
      return {
        before: keys.map(questions.get).find((question) => question !== undefined),
        remember: (question) => {
          asked = question;
          const here = keys.at(-1);
          if (question === undefined) keys.forEach(questions.drop);
          else if (here !== undefined) questions.put(here, question);
        },
        alsoAt: (place) => {
          if (asked !== undefined) questions.put(`${personId} ${place}`, asked);
        },
      };
    },
  };
}
