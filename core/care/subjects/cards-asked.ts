import { namedIn, sharedAnimals, type Named } from './named-in.ts';
import type { SubjectCard } from './subject-card.ts';

/** A card with its probability among those of its kind; none where a label of the kind has no card. */
export interface WeighedCard {
  readonly card: SubjectCard | undefined;
  readonly probability: number;
}

/**
 * How a card stands to the coral asked about: its title or headline names it, a label does (`beside` where the title names
 * others), its title names others alone, or it names none.
 */
type Fit = 'it' | 'label' | 'beside' | 'others' | 'none';

/** What that is worth in odds; own choices. */
const ODDS: Readonly<Record<Fit, number>> = { it: 30, label: 5, beside: 0.2, others: 0.02, none: 1 };
/** What a likeliest card gives way to. */
const BETTER: Readonly<Record<Fit, readonly Fit[]>> = {
  it: [],
  label: [],
  none: [],
  beside: ['it'],
  others: ['it', 'label', 'beside'],
};
/** Less likely than this a card is not brought forward by a name. Own choice. */
const LEAST = 0.0005;

/**
 * Cards likeliest first. Where the likeliest has another coral in its title than the message names, and a card that does
 * speak of that coral is not out of the question, the odds are shifted towards it; else nothing changes.
 */
export function cardsAsked(cards: readonly WeighedCard[], asked: Named): readonly WeighedCard[] {
  const [first] = cards;
  if (first === undefined || !hasCoral(asked)) return cards;
  const animals = new Set([...asked].filter(isOfCorals));
  const better = BETTER[fitOf(first, animals)];
  if (better.length === 0) return cards;
  const fits = cards.map((one) => ({ ...one, fit: fitOf(one, animals) }));
  if (!fits.some(({ fit, probability }) => better.includes(fit) && probability >= LEAST)) return cards;
  const shifted = fits.map(({ card, probability, fit }) => ({
    card,
    probability: probability * ODDS[fit],
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
  const inTitle = namedIn(title);
  const isOfOthers = hasCoral(inTitle) && sharedAnimals(animals, inTitle) === 0;
  const isInLabel = sharedAnimals(animals, namedIn(points.map(([label]) => label).join('; '))) >= 1;
  if (isInLabel) return isOfOthers ? 'beside' : 'label';
  return isOfOthers ? 'others' : 'none';
}

/** Fish and shrimps beside a coral choose no card. */
function isOfCorals(key: string): boolean {
  return key === 'animals.anemone' || /^(?:coral|of|group) /.test(key);
}

function hasCoral(named: Named): boolean {
  return [...named].some((key) => key.startsWith('coral '));
}
