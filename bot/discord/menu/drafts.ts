import type { Answer } from '../../../commands/answer.ts';

/** How long an answer can be posted. */
const KEPT_MS = 15 * 60_000;
/** Answers held at once, the latest: in memory only. */
const MOST_DRAFTS = 500;

/** An answer that only a helper has seen so far, and the message it is about. */
export interface Draft {
  readonly helperId: string;
  readonly channelId: string;
  readonly messageId: string;
  readonly answer: Answer;
}

/** Answers that can be posted: each by the helper it was worked out for, once, gone with the process. */
export interface Drafts {
  readonly put: (id: string, draft: Draft) => void;
  /** The draft, which is gone then; undefined for everyone else, and where there is none (any more). */
  readonly take: (id: string, helperId: string) => Draft | undefined;
}

export function openDrafts(nowMs: () => number): Drafts {
  const kept = new Map<string, { readonly draft: Draft; readonly atMs: number }>();
  const forgetOld = (): void => {
    for (const [old, { atMs }] of kept) {
      if (nowMs() - atMs <= KEPT_MS) return;
      kept.delete(old);
    }
  };
  return {
    put: (id, draft) => {
      forgetOld();
      kept.set(id, { draft, atMs: nowMs() });
      const [oldest] = kept.keys();
      if (kept.size > MOST_DRAFTS && oldest !== undefined) kept.delete(oldest);
    },
    take: (id, helperId) => {
      forgetOld();
      const draft = kept.get(id)?.draft;
      if (draft?.helperId !== helperId) return undefined;
      kept.delete(id);
      return draft;
    },
  };
}
