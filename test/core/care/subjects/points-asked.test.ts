import { describe, expect, it } from 'vitest';
import { subjectCard, subjectCards } from '../../../../core/care/subjects/cards.ts';
import { askedIn, pointInstead, pointsAsked } from '../../../../core/care/subjects/points-asked.ts';
import type { SubjectCard } from '../../../../core/care/subjects/subject-card.ts';
import type { Kind } from '../../../../core/language/kinds.ts';
import { scan } from '../../../../core/language/tokens.ts';

const asked = (text: string) =>
  askedIn(
    text,
    scan(text).names.flatMap((name) => (name.class === 'coral' ? [name.id] : [])),
  );

function card(kind: Kind, label: string): SubjectCard {
  const found = subjectCard(kind, label);
  if (found === undefined) throw new Error(`no card ${label}`);
  return found;
}

describe('points of a card by what a message names', () => {
  it.each([
    ['gsp is climbing the glass, stop it', 'growth', 'star polyps spread', 'On glass, wall or overflow'],
    ['zoas taking over, how do i stop them', 'growth', 'other spreaders', 'Zoas, palys'],
    ['gloves for a bubble tip or nah', 'handling', 'coral gloves', 'Bubble-tip, other anemones'],
    ['2 clowns 2 damsels 40 gal', 'fish-together', 'damsel or dottyback', 'Clowns with damsels'],
    ['duncan, mysis daily or waste', 'feed', 'fleshy corals', 'Duncan, candy cane'],
    ['how many fish in 40 gal', 'fish-together', 'how many', '150 L (40 gal)'],
    ['heater for a 20 gallon', 'equipment', 'heater size', '75 to 150 L (20 to 40 gal)'],
    ['yellow tang with blue tang', 'fish-together', 'two tangs', 'Yellow and blue (hepatus)'],
    ['is lanthanum safe', 'nutrients', 'phosphate media', 'Lanthanum'],
  ] as const)('%s', (text, kind, label, first) => {
    expect(pointsAsked(card(kind, label), asked(text))[0]?.[0]).toBe(first);
  });

  it('leaves them as they stand where nothing is named', () => {
    for (const each of [...subjectCards.values()].flat())
      expect(pointsAsked(each, asked('is it ok or not, please help'))).toEqual(each.points);
  });

  it('loses and doubles none', () => {
    const sawn = card('fragging', 'saw stony coral');
    const moved = pointsAsked(sawn, asked('saw or bone cutters for a hammer'));
    expect(moved.toSorted()).toEqual(sawn.points.toSorted());
  });

  it('takes the volume of the tank before others', () => {
    const known = askedIn('15 L bucket, how many fish', [], '20 gal');
    expect(pointsAsked(card('fish-together', 'how many'), known)[0]?.[0]).toBe('75 to 110 L (20 to 30 gal)');
  });
});

describe('a point instead of the headline', () => {
  it('answers for the animal named, where title and headline speak of others', () => {
    const [label] = pointInstead(card('handling', 'coral gloves'), asked('can i touch aiptasia')) ?? [];
    expect(label).toBe('Aiptasia');
  });

  it.each([
    ['cut my hammer', 'fragging', 'cut branching heads'],
    ['cut this', 'fragging', 'cut branching heads'],
    ['how is that with tangs', 'fragging', 'which glue'],
  ] as const)('is none for: %s', (text, kind, label) =>
    expect(pointInstead(card(kind, label), asked(text))).toBeUndefined(),
  );

  it.each([
    ['acclimate-dip', 'dip choice', 'i only wanna buy one dip, mostly get zoas and euphyllias'],
    ['cycle', 'nothing rises', 'no ammonia from the shrimp in a sock, then the cat ate it'],
  ] as const)('keeps the headline where others are named, too: %s, %s', (kind, label, text) =>
    expect(pointInstead(card(kind, label), asked(text))).toBeUndefined(),
  );
});
