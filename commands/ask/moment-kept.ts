import type { Moment } from '../../core/language/case.ts';
import type { Frame } from '../../core/language/frame.ts';
import type { Kind } from '../../core/language/kinds.ts';
import { likelyIn } from '../../core/language/moment-of.ts';
import { cardsKept, isPetWell } from './house-cards.ts';

/** What a case keeps of a message: as what it was taken, with what, and what else it may have been. */
export function momentKept(
  { slots, reading }: Frame,
  kind: Kind,
  { meant, atMs, isOthers }: { meant: readonly Frame[]; atMs: number; isOthers: boolean },
): Moment {
  const { likely, cards = [] } = likelyIn(meant);
  return {
    atMs,
    kind,
    slots,
    likely,
    cards: cardsKept(cards, meant),
    ...(isPetWell(reading) ? { isWell: true as const } : {}),
    ...(isOthers ? { isOthers: true as const } : {}),
  };
}
