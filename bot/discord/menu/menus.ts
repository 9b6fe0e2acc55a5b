import type { Answer } from '../../../commands/answer.ts';
import { checkupCommand } from '../../../commands/checkup.ts';
import type { Context } from '../../../commands/command.ts';
import { MAX_LINE } from '../../../commands/log/add.ts';
import { MAX_WORDS_LENGTH } from '../../../core/words/hear.ts';
import type { Desk } from '../outcome.ts';

/** Something that can be asked of a message someone wrote: an entry of Discord's menu on messages. */
export interface Menu {
  readonly name: string;
  /** Longest text it reads. */
  readonly mostLetters: number;
  readonly run: (desk: Desk, text: string, context: Context) => Answer;
}

export const menus: readonly Menu[] = [
  {
    name: 'Work out the numbers',
    mostLetters: MAX_WORDS_LENGTH,
    run: (desk, text, context) => desk.ask(text, context),
  },
  {
    name: 'Check these readings',
    mostLetters: MAX_LINE,
    run: (_desk, text, context) => checkupCommand.run({ readings: text }, context),
  },
];
