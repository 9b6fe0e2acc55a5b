import { lazyReader } from '../bot/reader/load.ts';
import type { Answer } from '../commands/answer.ts';
import type { Taken } from '../commands/ask/answer-message.ts';
import { ask as plainAsk } from '../commands/ask.ts';
import type { Asking } from '../commands/command.ts';

/** Asks in plain words with the reader of the house. */
export function ask(text: string, asking: Asking, taken?: Taken): Answer {
  return plainAsk(text, { reader: lazyReader, ...asking }, taken);
}
