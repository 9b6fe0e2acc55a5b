import { MessageFlags } from 'discord.js';
import type { Answerable } from '../callback.ts';

/** The message a button was pressed on, or a form opened from. */
export interface Pressed {
  readonly messageId: string;
  /** Only the one it answers sees it. */
  readonly isPrivate: boolean;
  /** Whom it answers, where that is known: Discord tells it of a command, we of a message. */
  readonly answers: string | undefined;
}

export function pressedOn(
  interaction: Answerable,
  answeredBy: (messageId: string) => string | undefined,
): Pressed | undefined {
  const message = 'message' in interaction ? interaction.message : null;
  if (message === null) return undefined;
  return {
    messageId: message.id,
    isPrivate: message.flags.has(MessageFlags.Ephemeral),
    answers: message.interactionMetadata?.user.id ?? answeredBy(message.id),
  };
}

/** Who may read the answer to a press: by the message, whatever the command is. */
export type Seen = 'as ever' | 'alone' | 'by all';

/** A private answer stays private, a public one public; somebody else's public one answers its presser alone. */
export function seenOn(pressed: Pressed | undefined, personId: string): Seen {
  if (pressed === undefined) return 'as ever';
  if (pressed.isPrivate) return 'alone';
  if (pressed.answers === undefined) return 'as ever';
  return pressed.answers === personId ? 'by all' : 'alone';
}
