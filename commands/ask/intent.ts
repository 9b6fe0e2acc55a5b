import type { Heard } from '../../core/words/hear.ts';
import type { Answer } from '../answer.ts';
import type { Context } from '../command.ts';

/** One kind of question: answers it, or undefined when the sentence is not of that kind. */
export type Intent = (heard: Heard, context: Context) => Answer | undefined;

/** Whether any of the words occurs as a whole word; words may be patterns. */
export function says(heard: Heard, ...words: readonly string[]): boolean {
  return new RegExp(String.raw`(?<![a-z0-9])(?:${words.join('|')})(?![a-z0-9])`).test(heard.text);
}

/** Whether others may read the answer: on a server, where no tank in use makes an answer in plain words private. */
export function isOpen({ server, keep }: Context): boolean {
  return server !== undefined && keep?.tankInUse() === undefined;
}
