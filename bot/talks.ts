import type { Talk } from '../commands/ask/talk.ts';
import type { Case } from '../core/language/case.ts';
import { openShortMemory } from './short-memory.ts';

/** Talks remembered at once, the latest: in memory only. */
const MOST_TALKS = 5000;
/** How long a case is kept in memory since its last message. */
const KEPT_MS = 2 * 3_600_000;

/** A talk that can be gone on with from another place too, such as the message of its answer. */
export interface PlacedTalk extends Talk {
  readonly alsoAt: (place: string) => void;
  /** The same at the message or interaction that was answered, with who asked there. */
  readonly askedAt: (askedId: string) => void;
}

/** Cases of places where a talk lasts: each one's own, by place or by what was asked last. */
export interface LastingCases {
  readonly find: (personId: string, place: string) => Case | undefined;
  readonly put: (personId: string, place: string, told: Case) => void;
  readonly drop: (personId: string, place: string) => void;
  readonly asked: (personId: string, place: string, askedId: string) => void;
}

/** Where a talk is gone on with: at the last of the places looked at, if not said, and for how long. */
export interface GoesOn {
  readonly at?: string | undefined;
  readonly lasts?: boolean;
}

/**
 * What members went through: each one's own, by place. In memory for two hours, gone with the process; where a talk lasts,
 * in the store. What is older in memory goes with the next question of anyone.
 */
export interface Talks {
  /** The talk of one person at the first of these places where there is one. */
  readonly talkOf: (personId: string, places: readonly string[], goesOn?: GoesOn) => PlacedTalk;
  /** Who asked in a message of this id, as far as that is in memory. */
  readonly askerOf: (askedId: string) => string | undefined;
  /** Nothing of this person is in memory any more. */
  readonly forgetTalks: (personId: string) => void;
}

/** Nothing lasts: as in the terminal room. */
const nowhere: LastingCases = {
  find: () => undefined,
  put: () => {},
  drop: () => {},
  asked: () => {},
};

export function openTalks(nowMs: () => number, lasting: LastingCases = nowhere): Talks {
  const cases = openShortMemory<Case>(nowMs, MOST_TALKS, KEPT_MS);
  const askers = openShortMemory<string>(nowMs, MOST_TALKS, KEPT_MS);
  return {
    talkOf: (personId, places, { at = places.at(-1), lasts = false } = {}) => {
      const keyOf = (place: string): string => `${personId} ${place}`;
      const findAt = (place: string): Case | undefined =>
        cases.get(keyOf(place)) ?? (lasts ? lasting.find(personId, place) : undefined);
      const before = places.map(findAt).find((found) => found !== undefined);
      let kept: Case | undefined;
      const putDown = (after: Case, here: string): void => {
        if (after.last === '' && before !== undefined)
          cases.dropWhere((key, { last }) => key.startsWith(keyOf('')) && last === before.last);
        if (lasts) lasting.put(personId, here, after);
        else cases.put(keyOf(here), after);
      };
      const alsoAt = (place: string): void => {
        if (kept !== undefined) cases.put(keyOf(place), kept);
      };
      return {
        before,
        remember: (after) => {
          kept = after;
          if (at === undefined) return;
          if (after !== undefined) putDown(after, at);
          else if (lasts) lasting.drop(personId, at);
          else [...places, at].map(keyOf).forEach(cases.drop);
        },
        alsoAt,
        askedAt: (askedId) => {
          askers.put(askedId, personId);
          alsoAt(askedId);
          if (kept !== undefined && lasts && at !== undefined) lasting.asked(personId, at, askedId);
        },
      };
    },
    askerOf: askers.get,
    forgetTalks: (personId) => cases.dropWhere((key) => key.startsWith(`${personId} `)),
  };
}
