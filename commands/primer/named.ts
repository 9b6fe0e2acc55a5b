import { primers } from '../../core/care/primers/cards.ts';
import type { PrimerId } from '../../core/care/primers/primer.ts';
import { wordsBesides } from '../../core/language/goes-on.ts';
import { met } from '../../core/language/met.ts';
import type { Scanned } from '../../core/language/tokens.ts';

/** Longer messages ask something particular. */
const MOST_WORDS = 9;

/** The names of every card, the longest first, so that "salt water" is not found inside "mixing salt water". */
const named = primers
  .flatMap(({ id, names }) =>
    [id.toLowerCase(), ...names].map((name) => ({ id, words: ` ${wordsOf(name)} ` })),
  )
  .toSorted((a, b) => b.words.length - a.words.length);

/** The card whose name stands in a short message that asks what something is, or how it goes; undefined for any other. */
export function primerNamed(scanned: Scanned): PrimerId | undefined {
  if (scanned.numbers.length > 0 || wordsBesides(scanned) > MOST_WORDS) return undefined;
  const text = ` ${wordsOf(scanned.text)} `;
  const isAsked =
    text.includes(' tell me about ') ||
    met(scanned, 'manner.askWhich', 'manner.askHow', 'manner.askWhy', 'manner.newcomer');
  if (!isAsked) return undefined;
  return named.find(({ words }) => text.includes(words))?.id;
}

function wordsOf(text: string): string {
  return text
    .toLowerCase()
    .split(/[^\p{L}\p{N}]+/u)
    .filter((word) => word !== '')
    .join(' ');
}
