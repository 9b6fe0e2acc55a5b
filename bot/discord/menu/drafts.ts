import type { Answer } from '../../../commands/answer.ts';
import { BRIEF_MS, openBrief } from '../held/brief.ts';
import type { HeldDesk } from '../held/holder.ts';
import { openShortMemory } from '../../short-memory.ts';

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
  /** What the buttons of a helper's own view stand for. */
  readonly held: HeldDesk['held'];
}

export function openDrafts(nowMs: () => number): Drafts {
  const drafts = openShortMemory<Draft>(nowMs, MOST_DRAFTS, BRIEF_MS);
  return {
    held: openBrief(nowMs),
    put: drafts.put,
    take: (id, helperId) => {
      const draft = drafts.get(id);
      if (draft?.helperId !== helperId) return undefined;
      drafts.drop(id);
      return draft;
    },
  };
}
