import { lazyReader } from '../bot/reader/load.ts';
import type { Answer } from '../commands/answer.ts';
import type { Taken } from '../commands/ask/answer-message.ts';
import { ask as plainAsk } from '../commands/ask.ts';
import type { Asking } from '../commands/command.ts';
import { kinds as kindNames } from '../core/language/kinds.ts';
import { Problem } from '../core/problem.ts';

/** Asks in plain words with the reader of the house. */
export function ask(text: string, asking: Asking, taken?: Taken): Answer {
  return plainAsk(text, { reader: lazyReader, ...asking }, taken);
}

/** What can be reached from a question in plain words: its answer, and the answers behind the kinds it offers. */
export function reached(text: string, asking: Asking): readonly Answer[] {
  const given = ask(text, asking);
  const kinds = given.next.flatMap(({ command, input }) => {
    const as = command === 'ask' ? (input as Readonly<Record<string, string | undefined>>)['as'] : undefined;
    return kindNames.filter((kind) => kind === as);
  });
  return [given, ...kinds.flatMap((as) => attempt(() => ask(text, asking, { as })))];
}

/** A question asked back is no answer to show. */
function attempt(run: () => Answer): readonly Answer[] {
  try {
    return [run()];
  } catch (error) {
    if (error instanceof Problem) return [];
    throw error;
  }
}
