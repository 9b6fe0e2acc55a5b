import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { symptomCard, symptomIds } from '../../../../core/care/symptoms/cards.ts';
import { rank } from '../../../../core/care/symptoms/rank.ts';
import { signs } from '../../../../core/care/symptoms/sign.ts';

const anyCard = fc.constantFrom(...symptomIds).map(symptomCard);
const anyFound = fc.array(
  fc.constantFrom(...signs).map((sign) => ({ sign, text: `seen ${sign}` })),
  { maxLength: 5 },
);

function placesOf(ranked: ReturnType<typeof rank>): readonly string[] {
  return ranked.map(({ id }) => id);
}

describe('rank', () => {
  it('leaves the order of the card where nothing is known', () => {
    for (const id of symptomIds) {
      const card = symptomCard(id);
      expect(rank(card, [], []).map((one) => one.id)).toEqual(Object.keys(card.causes));
    }
  });

  it('keeps every cause, and says why for each that moved', () => {
    fc.assert(
      fc.property(anyCard, anyFound, fc.nat(7), fc.nat(7), (card, found, a, b) => {
        const answers = card.questions.flatMap(({ choices }, place) => {
          const all = Object.values(choices);
          return all[(place === 0 ? a : b) % all.length] ?? [];
        });
        const ranked = rank(card, answers, found);
        expect(ranked.map(({ id }) => id).sort()).toEqual(Object.keys(card.causes).sort());
        for (const { score, reasons } of ranked) if (score !== 0) expect(reasons.length).toBeGreaterThan(0);
        for (const [place, { score }] of ranked.entries())
          expect(score).toBeLessThanOrEqual(ranked[place - 1]?.score ?? Infinity);
      }),
    );
  });

  it('never lowers a cause that alone is spoken for', () => {
    const lifted = symptomIds.flatMap((id) => {
      const card = symptomCard(id);
      const before = placesOf(rank(card, [], []));
      const choices = card.questions.flatMap((question) => Object.values(question.choices));
      return choices.flatMap((choice) => {
        const [cause, ...more] = choice.up ?? [];
        if (cause === undefined || more.length > 0) return [];
        const after = placesOf(rank(card, [choice], []));
        return [{ id, cause, fell: after.indexOf(cause) > before.indexOf(cause) }];
      });
    });
    expect(lifted.length).toBeGreaterThan(30);
    expect(lifted.filter(({ fell }) => fell)).toEqual([]);
  });

  it('puts salinity first for closed polyps where the log says so', () => {
    const text = 'your log: salinity 30 ppt';
    const [first] = rank(symptomCard('polyps closed'), [], [{ sign: 'salinity off', text }]);
    expect(first?.id).toBe('water');
    expect(first?.reasons).toEqual([text]);
  });
});
