import type { Heard } from '../../core/words/hear.ts';
import type { Answer } from '../answer.ts';
import type { OwnContext } from '../command.ts';

/** One kind of question: answers it, or undefined when the sentence is not of that kind. */
export type Intent = (heard: Heard, context: OwnContext) => Answer | undefined;

/** The words of intents are fixed, so each list is compiled once. */
const compiled = new Map<string, RegExp>();

/**
 * Whether any of the words occurs as a whole word or, a number, on its own: "0.12" is no "0". Words may be patterns; they
 * are fixed texts, never a member's.
 */
export function says(heard: Heard, ...words: readonly string[]): boolean {
  const list = words.join('|');
  const known = compiled.get(list);
  if (known !== undefined) return known.test(heard.text);
  const pattern = new RegExp(String.raw`(?<![a-z0-9])(?!(?<=\d[.,])\d)(?:${list})(?![a-z0-9]|(?<=\d)[.,]\d)`);
  compiled.set(list, pattern);
  return pattern.test(heard.text);
}
