import type { Reminder } from '../../commands/reminder.ts';
import { say } from '../../core/wording/say.ts';
import type { Desk, Reply } from './desk.ts';
import type { CommandLine } from './read.ts';
import { offered, page } from './render.ts';
import { replyToLine } from './run-line.ts';
import type { Style } from './wrap.ts';

/** Whether a line says that what is due was done. */
export function saysDone(typed: string): boolean {
  return /^done[.!]?$/i.test(typed.trim());
}

/** Settles what was just due, or asks which. */
export function settled(desk: Desk, style: Style): Promise<Reply> {
  const due = desk.due();
  const offers = due.map(doneLine);
  const [only, more] = offers;
  if (only !== undefined && more === undefined) return replyToLine(only, desk, style);
  const choices = due.map(({ text }) => text);
  const text = page(offered(say('terminal.whichDone'), choices, style));
  return Promise.resolve({ text, offers, choices, leave: false });
}

function doneLine({ id }: Pick<Reminder, 'id'>): CommandLine {
  return { kind: 'command', path: ['remind', 'done'], input: { reminder: String(id) } };
}
