import type { Talk } from '../commands/ask/talk.ts';

/** How long what was asked is gone back to. */
const KEPT_MS = 15 * 60_000;
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
  const kept = new Map<string, { readonly question: string; readonly atMs: number }>();
  /** They stand in the order they came. */
  const forgetOld = (): void => {
    for (const [key, { atMs }] of kept) {
      if (nowMs() - atMs <= KEPT_MS) return;
      kept.delete(key);
    }
  };
  const put = (key: string, question: string): void => {
    kept.delete(key);
    kept.set(key, { question, atMs: nowMs() });
    const [oldest] = kept.keys();
    if (kept.size > MOST_TALKS && oldest !== undefined) kept.delete(oldest);
  };
  return {
    talkOf: (personId, places) => {
      forgetOld();
      const keys = places.map((place) => `${personId} ${place}`);
      let asked: string | undefined;
      return {
        before: keys.map((key) => kept.get(key)?.question).find((question) => question !== undefined),
        remember: (question) => {
          asked = question;
          const here = keys.at(-1);
          if (here !== undefined) put(here, question);
        },
        alsoAt: (place) => {
          if (asked !== undefined) put(`${personId} ${place}`, asked);
        },
      };
    },
  };
}
