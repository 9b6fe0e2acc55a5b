import { followedUp } from '../../core/words/follow-up.ts';
import { hear } from '../../core/words/hear.ts';
import { tankVolume } from '../../core/words/tank-volume.ts';

/** What the same member asked in the same place shortly before, and where what they ask now is put down. */
export interface Talk {
  readonly before: string | undefined;
  /** Puts it down; undefined where there is nothing to go on from any more. */
  readonly remember: (question: string | undefined) => void;
}

/** How a question would come out: something is done, answered, asked back, or not understood; and all that was said, to compare. */
export interface Outcome {
  readonly kind: 'acts' | 'answered' | 'asked back' | 'lost';
  readonly text: string;
}

const RANK: readonly Outcome['kind'][] = ['lost', 'asked back', 'answered', 'acts'];

/**
 * The question a sentence asks in a talk: itself, or, where it begins as one that goes on, the earlier one with what is
 * new put in, if the two together are understood at least as well and what is new changes the answer. To do something is never
 * what a sentence means by going on.
 */
export function questionIn(
  { before }: Pick<Talk, 'before'>,
  text: string,
  outcomeOf: (question: string) => Outcome,
): string {
  const together = before === undefined ? undefined : followedUp(before, text);
  if (before === undefined || together === undefined) return text;
  const [one, both] = [outcomeOf(text), outcomeOf(together)];
  if (both.kind === 'lost' || both.kind === 'acts' || RANK.indexOf(both.kind) < RANK.indexOf(one.kind))
    return text;
  return both.text === outcomeOf(before).text && !namesWater(text) ? text : together;
}

/** A volume or a compound counts for the next question even where this answer does not need it. */
function namesWater(text: string): boolean {
  const heard = hear(text);
  return heard.compounds.length > 0 || tankVolume(heard) !== undefined;
}
