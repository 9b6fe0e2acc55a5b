import type { Talk } from '../commands/ask/talk.ts';
import type { Case } from '../core/language/case.ts';
import { openShortMemory } from './short-memory.ts';

/** Talks remembered at once, the latest: in memory only. */
const MOST_TALKS = 5000;
/** How long a case is kept since its last message. */
const KEPT_MS = 2 * 3_600_000;

/** A talk that can be gone on with from another place too, such as the message of its answer. */
export interface PlacedTalk extends Talk {
  readonly alsoAt: (place: string) => void;
}

/**
 * What members went through in the last two hours: each one's own, by place, gone with the process. What is older goes
 * with the next question of anyone.
 */
export interface Talks {
  /** The talk of one person at the first of these places where there is one; it goes on at the last. */
  readonly talkOf: (personId: string, places: readonly string[]) => PlacedTalk;
}

export function openTalks(nowMs: () => number): Talks {
  const cases = openShortMemory<Case>(nowMs, MOST_TALKS, KEPT_MS);
  return {
    talkOf: (personId, places) => {
      const keys = places.map((place) => `${personId} ${place}`);
      let kept: Case | undefined;
      return {
        before: keys.map(cases.get).find((found) => found !== undefined),
        remember: (after) => {
          kept = after;
          const here = keys.at(-1);
          if (after === undefined) keys.forEach(cases.drop);
          else if (here !== undefined) cases.put(here, after);
        },
        alsoAt: (place) => {
          if (kept !== undefined) cases.put(`${personId} ${place}`, kept);
        },
      };
    },
  };
}
