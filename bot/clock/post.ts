import type { Answer, NextAction } from '../../commands/answer.ts';
import type { Place } from '../../commands/reminder.ts';

/** A message the bot sends by itself. */
export interface Letter {
  readonly toPersonId: string;
  readonly place: Place;
  readonly answer: Answer;
  /** At most 25 characters: the platform takes two letters of one nonce within a few minutes for one. */
  readonly nonce: string;
  /** A next action only this letter has: it tells whether an earlier attempt arrived. */
  readonly mark?: NextAction | undefined;
  /** How often sending it was begun before. */
  readonly attempts: number;
  /** BCP 47 tag of its reader, where it is known. */
  readonly locale?: string | undefined;
}

/**
 * What became of a letter. `gone`: it cannot be delivered there; `why` is half a sentence that follows a colon.
 * `later`: it may or may not have arrived; to be tried again, not before `afterMs` from now where that is said.
 */
export type Posted =
  | { readonly kind: 'sent' }
  | { readonly kind: 'gone'; readonly why: string }
  | { readonly kind: 'later'; readonly afterMs?: number | undefined };

/** The way out to the platform. */
export interface Post {
  /** Never throws. Gives up (`later`) when `hurry` is aborted. */
  readonly send: (letter: Letter, hurry: AbortSignal) => Promise<Posted>;
}
