import type { Moment } from './case.ts';
import type { Frame } from './frame.ts';

/** Less likely kinds and cards of a message are not kept with it. Own choices. */
const LEAST = 0.05;
const MOST_KINDS = 5;
const MOST_CARDS = 3;

/** What a message may have been, for the case: its likeliest kinds and, below each, its likeliest cards. */
export function likelyIn(frames: readonly Frame[]): Required<Pick<Moment, 'likely' | 'cards'>> {
  const kept = frames
    .slice(0, MOST_KINDS)
    .filter(({ probability }, at) => at === 0 || probability >= LEAST)
    .map(({ kind, probability, cards }) => ({ kind, probability, cards }));
  return {
    likely: kept.map(({ kind, probability }) => ({ kind, probability: rounded(probability) })),
    cards: kept.flatMap(({ kind, probability, cards }) =>
      cards
        .slice(0, MOST_CARDS)
        .map((card) => ({ kind, name: card.name, probability: rounded(probability * card.probability) }))
        .filter((card) => card.probability >= LEAST),
    ),
  };
}

/** A case is kept as text: three digits are enough. */
function rounded(probability: number): number {
  return Math.round(probability * 1000) / 1000;
}
