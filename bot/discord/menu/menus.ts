import type { Answer } from '../../../commands/answer.ts';
import { checkupCommand } from '../../../commands/checkup.ts';
import type { Context } from '../../../commands/command.ts';
import type { Desk } from '../outcome.ts';

/** Something that can be asked of a message someone wrote: an entry of Discord's menu on messages. */
export interface Menu {
  readonly name: string;
  readonly run: (desk: Desk, text: string, context: Context) => Answer;
}

export const menus: readonly Menu[] = [
  {
    name: 'Work out the numbers',
    run: (desk, text, context) => desk.ask(text, context),
  },
  {
    name: 'Check these readings',
    run: (_desk, text, context) => checkupCommand.run({ readings: text }, context),
  },
];
