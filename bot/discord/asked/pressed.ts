import { MessageFlags } from 'discord.js';
import type { Answerable } from '../callback.ts';
import { isAlone } from './place.ts';

/** The message a button was pressed on, or a form opened from. */
export interface Pressed {
  /** The message or the interaction it answers: known before it was sent, unlike its own id. */
  readonly askedId: string | undefined;
  /** Only the one it answers sees it. */
  readonly isPrivate: boolean;
  /** Whom it answers, where that is known: by Discord for a command, by us for a message, by its own words for a letter. */
  readonly answers: string | undefined;
}

export function pressedOn(
  interaction: Answerable,
  askerOf: (askedId: string) => string | undefined,
): Pressed | undefined {
  const message = 'message' in interaction ? interaction.message : null;
  if (message === null) return undefined;
  const { interactionMetadata: called, reference, flags, mentions } = message;
  const askedId = called?.id ?? reference?.messageId;
  const named = mentions.users.size === 1 ? mentions.users.firstKey() : undefined;
  const known = called?.user.id ?? (askedId === undefined ? named : askerOf(askedId));
  return {
    askedId,
    isPrivate: flags.has(MessageFlags.Ephemeral),
    answers: isAlone(interaction) ? interaction.user.id : known,
  };
}

/** Who may read the answer to a press: by the message, whatever the command is. */
export type Seen = 'as ever' | 'alone' | 'by all';

/** A private answer stays private, a public one public; one that may be somebody else's answers its presser alone. */
export function seenOn(pressed: Pressed | undefined, personId: string): Seen {
  if (pressed === undefined) return 'as ever';
  if (pressed.isPrivate) return 'alone';
  return pressed.answers === personId ? 'by all' : 'alone';
}
