import type { Tone } from '../../../commands/answer.ts';

/**
 * The edge of an answer by how pressing it is: three of the eight colours of Okabe & Ito, "Color Universal Design", which
 * stay apart for readers who lack one kind of cone. A word says the same where it presses.
 */
export const accents: Readonly<Record<Tone, number>> = {
  urgent: 0xd55e00,
  question: 0x56b4e9,
  plain: 0x009e73,
};
