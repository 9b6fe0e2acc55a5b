import type { Answer } from '../../../commands/answer.ts';
import type { Asking } from '../../../commands/command.ts';
import { kinds } from '../../../core/language/kinds.ts';
import { Problem } from '../../../core/problem.ts';
import { ask } from '../../ask.ts';
import { textOf } from '../text.ts';

/** What an offer begins with; an answer given as if sure never does. */
const OFFER = /^(?:Which of these do you mean\?|Is somebody hurt, or is something going wrong)/;

/**
 * What a member comes to see who asks this: the one answer or question back; where it is not sure, every one that it offers.
 */
export function shown(question: string, asking: Asking = { nowMs: 0 }): readonly string[] {
  const first = said(() => ask(question, asking));
  if (typeof first === 'string') return [first];
  if (!OFFER.test(first.headline)) return [textOf(first)];
  return first.next.flatMap(({ command, input }) => {
    const as = command === 'ask' ? (input as Readonly<Record<string, string | undefined>>)['as'] : undefined;
    return kinds
      .filter((kind) => kind === as)
      .map((kind) => said(() => ask(question, asking, { as: kind })))
      .map((one) => (typeof one === 'string' ? one : textOf(one)));
  });
}

/** An answer, or the words of a question asked back. */
function said(run: () => Answer): Answer | string {
  try {
    return run();
  } catch (error) {
    if (error instanceof Problem) return [error.message, ...error.choices].join('\n');
    throw error;
  }
}
