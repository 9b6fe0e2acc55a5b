import { say } from '../../core/wording/say.ts';
import { answer, type Answer } from '../answer.ts';

/** A question that was understood, and on which nothing here was checked: said, not guessed. */
export function noPage(): Answer {
  return answer({ headline: say('ask.nothingChecked') });
}
