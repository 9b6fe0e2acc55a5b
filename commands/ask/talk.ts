import { followedUp, goesOn } from '../../core/words/follow-up.ts';

/** What the same member asked in the same place shortly before, and where what they ask now is put down. */
export interface Talk {
  readonly before: string | undefined;
  readonly remember: (question: string) => void;
}

/** How a question came out: answered, asked back, or not understood. */
export type Outcome = 'answered' | 'asked back' | 'lost';

/**
 * The question a sentence asks in a talk: itself, or, where it begins as one that goes on, the earlier one with what is
 * new put in, if the two together are understood at least as well.
 */
export function questionIn(
  { before }: Pick<Talk, 'before'>,
  text: string,
  outcomeOf: (question: string) => Outcome,
): string {
  if (before === undefined || !goesOn(text)) return text;
  const together = followedUp(before, text);
  if (together === undefined) return text;
  const rank: readonly Outcome[] = ['lost', 'asked back', 'answered'];
  const [one, both] = [outcomeOf(text), outcomeOf(together)];
  return both !== 'lost' && rank.indexOf(both) >= rank.indexOf(one) ? together : text;
}
