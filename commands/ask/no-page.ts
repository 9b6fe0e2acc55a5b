import { kindMeanings, type Kind } from '../../core/language/kinds.ts';
import { answer, type Answer } from '../answer.ts';

/** A question that was understood, and on which nothing here was checked: said, not guessed. */
export function noPage(kind: Kind): Answer {
  return answer({
    headline: `You ask about this: ${kindMeanings[kind]}. I have nothing checked on it yet; please ask the keepers here.`,
  });
}
