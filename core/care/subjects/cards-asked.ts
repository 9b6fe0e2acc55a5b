import { namedIn, sharedAnimals, type Named } from './named-in.ts';
import type { SubjectCard } from './subject-card.ts';

/** A card with its probability among those of its kind; none where a label of the kind has no card. */
export interface WeighedCard {
  readonly card: SubjectCard | undefined;
  readonly probability: number;
}

/** Own choices: a card that names the coral asked about, and one whose title names others, in odds. */
const NAMES_IT = 30;
const NAMES_OTHERS = 0.1;
/** Less likely than this a card is not brought forward by a name. Own choice. */
const LEAST = 0.003;

/**
 * Cards likeliest first. Where the likeliest has another coral in its title than the message names, and a card that does
 * speak of that coral is not out of the question, the odds are shifted towards it; else nothing changes.
 */
export function cardsAsked(cards: readonly WeighedCard[], animals: Named): readonly WeighedCard[] {
  const [first] = cards;
  if (first === undefined || !hasCoral(animals) || fitOf(first, animals) !== 'others') return cards;
  const fits = cards.map((one) => ({ ...one, fit: fitOf(one, animals) }));
  if (!fits.some(({ fit: own, probability }) => own === 'it' && probability >= LEAST)) return cards;
  const shifted = fits.map(({ card, probability, fit: own }) => ({
    card,
    probability: probability * { it: NAMES_IT, others: NAMES_OTHERS, none: 1 }[own],
  }));
  const sum = shifted.reduce((total, { probability }) => total + probability, 0);
  return shifted
    .map(({ card, probability }) => ({ card, probability: probability / sum }))
    .toSorted((a, b) => b.probability - a.probability);
}

function fitOf({ card }: WeighedCard, animals: Named): 'it' | 'others' | 'none' {
  if (card === undefined) return 'none';
  const { title, headline, points } = card;
  const labels = points.map(([label]) => label).join('; ');
  if (sharedAnimals(animals, namedIn(`${title}; ${headline}; ${labels}`)) >= 1) return 'it';
  const inTitle = namedIn(title);
  return hasCoral(inTitle) && sharedAnimals(animals, inTitle) === 0 ? 'others' : 'none';
}

function hasCoral(named: Named): boolean {
  return [...named].some((key) => key.startsWith('coral '));
}
