import { namedIn, sharedAnimals, type Named } from './named-in.ts';
import type { SubjectCard } from './subject-card.ts';

/** A card with its probability among those of its kind; none where a label of the kind has no card. */
export interface WeighedCard {
  readonly card: SubjectCard | undefined;
  readonly probability: number;
}

/** How a card stands to the coral asked about: its title or headline names it, only a label does, its title names others. */
type Fit = 'it' | 'aside' | 'others' | 'none';

/** What that is worth in odds; own choices. */
const ODDS: Readonly<Record<Fit, number>> = { it: 30, aside: 5, others: 0.02, none: 1 };
/** Less likely than this a card is not brought forward by a name. Own choice. */
const LEAST = 0.0005;

/**
 * Cards likeliest first. Where the likeliest has another coral in its title than the message names, and a card that does
 * speak of that coral is not out of the question, the odds are shifted towards it; else nothing changes.
 */
export function cardsAsked(cards: readonly WeighedCard[], animals: Named): readonly WeighedCard[] {
  const [first] = cards;
  if (first === undefined || !hasCoral(animals) || fitOf(first, animals) !== 'others') return cards;
  const fits = cards.map((one) => ({ ...one, fit: fitOf(one, animals) }));
  if (!fits.some(({ fit: own, probability }) => (own === 'it' || own === 'aside') && probability >= LEAST))
    return cards;
  const shifted = fits.map(({ card, probability, fit: own }) => ({
    card,
    probability: probability * ODDS[own],
  }));
  const sum = shifted.reduce((total, { probability }) => total + probability, 0);
  return shifted
    .map(({ card, probability }) => ({ card, probability: probability / sum }))
    .toSorted((a, b) => b.probability - a.probability);
}

function fitOf({ card }: WeighedCard, animals: Named): Fit {
  if (card === undefined) return 'none';
  const { title, headline, points } = card;
  if (sharedAnimals(animals, namedIn(`${title}; ${headline}`)) >= 1) return 'it';
  if (sharedAnimals(animals, namedIn(points.map(([label]) => label).join('; '))) >= 1) return 'aside';
  const inTitle = namedIn(title);
  return hasCoral(inTitle) && sharedAnimals(animals, inTitle) === 0 ? 'others' : 'none';
}

function hasCoral(named: Named): boolean {
  return [...named].some((key) => key.startsWith('coral '));
}
