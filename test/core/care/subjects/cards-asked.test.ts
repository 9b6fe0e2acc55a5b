import { describe, expect, it } from 'vitest';
import { subjectCard } from '../../../../core/care/subjects/cards.ts';
import { cardsAsked } from '../../../../core/care/subjects/cards-asked.ts';
import { namedIn } from '../../../../core/care/subjects/named-in.ts';
import type { Kind } from '../../../../core/language/kinds.ts';

function first(kind: Kind, odds: Readonly<Record<string, number>>, text: string): string | undefined {
  const cards = Object.entries(odds).map(([name, probability]) => ({
    card: subjectCard(kind, name),
    probability,
  }));
  return cardsAsked(cards, namedIn(text))[0]?.card?.card;
}

describe('cards weighed by the coral that is named', () => {
  it.each([
    [
      'fragging',
      { 'saw stony coral': 0.7, 'cut sticks': 0.27, 'cut branching heads': 0.02 },
      'hammer branch',
    ],
    ['fragging', { zoanthids: 0.58, 'cut branching heads': 0.22, 'cut soft coral': 0.18 }, 'duncan'],
  ] as const)('%s: the card that speaks of it comes first', (kind, odds, text) =>
    expect(first(kind, odds, text)).toBe('cut branching heads'),
  );

  it('goes to the sibling for zoas where xenia was likelier', () => {
    expect(first('growth', { 'stop xenia': 0.97, 'other spreaders': 0.03 }, 'zoas')).toBe('other spreaders');
  });

  it.each([
    [
      'a card on no coral in particular stays',
      'fragging',
      { 'glue fails': 0.9, zoanthids: 0.1 },
      'zoas',
      'glue fails',
    ],
    ['no coral is named', 'growth', { 'stop xenia': 0.9, 'zoa growth': 0.1 }, 'it spreads', 'stop xenia'],
    ['no card speaks of it', 'growth', { 'stop xenia': 0.9, 'no growth': 0.1 }, 'sea fan', 'stop xenia'],
    ['out of the question', 'growth', { 'stop xenia': 0.9999, 'zoa growth': 0.0001 }, 'zoas', 'stop xenia'],
    [
      'a shrimp beside it',
      'feed',
      { 'fleshy corals': 0.9, 'torch and hammer': 0.1 },
      'scoly a whole shrimp',
      'fleshy corals',
    ],
  ] as const)('nothing changes: %s', (_, kind, odds, text, expected) =>
    expect(first(kind, odds, text)).toBe(expected),
  );
});
