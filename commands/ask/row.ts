import type { Frame } from '../../core/language/frame.ts';
import type { Kind } from '../../core/language/kinds.ts';
import type { SlotName } from '../../core/language/slots.ts';
import type { SentenceKey } from '../../core/wording/language.ts';
import type { Answer, NextAction } from '../answer.ts';
import type { OwnContext } from '../command.ts';

/** Something a kind of question cannot do without: any one of these slots, or the one question that is asked back. */
export interface Need {
  readonly oneOf: readonly SlotName[];
  readonly ask: SentenceKey;
  /** Whether this message cannot do without; always where left out ("sps" is enough where a coral is asked for). */
  readonly when?: (frame: Frame) => boolean;
  /** What can be answered with one press; none where left out. */
  readonly next?: (frame: Frame) => readonly NextAction[];
}

/** What is done with one kind of question. */
export interface Row<K extends Kind = Kind> {
  readonly kind: K;
  /** On the button that offers it: what it does, at most 40 letters. */
  readonly label: SentenceKey;
  /** In the order they are asked for; the question is kept until its need is met. */
  readonly needs?: readonly Need[];
  /** Slots that its answer uses: what else was said is named as not used. */
  readonly uses: readonly SlotName[];
  /** All that is said is kept for the case: nothing of it is called unused. */
  readonly keepsAll?: true;
  /** Whether a sum or a table answers a message better than a card on a particular question; never where left out. */
  readonly computes?: (frame: Frame) => boolean;
  /** Answers, or undefined where the frame holds nothing it could answer. @throws Problem as its command does. */
  readonly answer: (frame: Frame, context: OwnContext) => Answer | undefined;
}

/** The first thing a row needs that a frame does not have. */
export function missingIn({ needs = [] }: Row, frame: Frame): Need | undefined {
  return needs.find(
    ({ oneOf, when }) => oneOf.every((name) => frame.slots[name] === undefined) && when?.(frame) !== false,
  );
}
