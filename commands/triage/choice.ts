import type { Choice, Question } from '../../core/care/symptoms/card.ts';
import { Problem } from '../../core/problem.ts';
import { clean } from '../../core/quantity/clean.ts';

/** What skips a question. */
export const NOT_SURE = 'not sure';

/**
 * The answer meant by a typed word, a number from 1, or the words shown; undefined for "not sure".
 *
 * @throws Problem with the choices.
 */
export function readChoice({ ask, choices }: Question, text: string, field: string): Choice | undefined {
  const wanted = clean(text);
  if (['not sure', 'unsure', 'dont know', "don't know", 'skip', '?', '-'].includes(wanted)) return undefined;
  const keys = Object.keys(choices);
  const key =
    keys[Number(wanted) - 1] ??
    keys.find((each) => each === wanted || clean(choices[each]?.label ?? '') === wanted) ??
    keys.find((each) => wanted.length > 1 && clean(choices[each]?.label ?? '').startsWith(wanted));
  const choice = key === undefined ? undefined : choices[key];
  if (choice !== undefined) return choice;
  throw new Problem(ask, { field, given: text, choices: [...keys, NOT_SURE] });
}
