import { describe, expect, it } from 'vitest';
import { readSentences } from '../../../../bot/reader/files.ts';
import { subjectCard, subjectCards } from '../../../../core/care/subjects/cards.ts';
import { kinds, type Kind } from '../../../../core/language/kinds.ts';

const lines = readSentences().flatMap((batch) => batch.lines);
const all = [...subjectCards].flatMap(([kind, cards]) => cards.map((card) => ({ kind, card })));
/** What no card says: the row of the kind, or the page of the coral that is named. */
const ELSEWHERE = new Set(['other', 'page']);

describe('cards on particular questions', () => {
  it('stand below kinds there are, each label and title once', () => {
    for (const kind of subjectCards.keys()) expect(kinds).toContain(kind);
    for (const [, cards] of subjectCards)
      expect(new Set(cards.map(({ card }) => card)).size).toBe(cards.length);
    const titles = all.map(({ card }) => card.title.toLowerCase());
    expect(titles.filter((title, at) => titles.indexOf(title) !== at)).toEqual([]);
  });

  it.each(all.map(({ kind, card }) => [`${kind}: ${card.card}`, kind, card.card] as const))(
    '%s has sentences to be known by',
    (_, kind, label) =>
      expect(lines.filter((line) => line.kind === kind && line.card === label).length).toBeGreaterThanOrEqual(
        5,
      ),
  );

  it('are all the labels that sentences of those kinds bear', () => {
    const strange = lines.filter(
      ({ kind, card }) =>
        card !== undefined &&
        subjectCards.has(kind) &&
        !ELSEWHERE.has(card) &&
        subjectCard(kind, card) === undefined,
    );
    expect(strange.map(({ kind, card }) => `${kind}/${card ?? ''}`)).toEqual([]);
  });

  it.each([...subjectCards.keys()])('of %s are labelled on nearly all its sentences', (kind: Kind) => {
    const own = lines.filter((line) => line.kind === kind);
    expect(own.filter(({ card }) => card !== undefined).length / own.length).toBeGreaterThan(0.85);
  });

  it('give no amount of a medicine, of an acid or of what is dosed by its label alone', () => {
    const amount = /\b\d[\d.,]*\s*(?:mg|mL|g|drops?)\b[^.;]{0,40}\b(?:per|\/)\s*(?:kg|L|litre|gal)/i;
    const guarded = /copper|praziquantel|antibiotic|muriatic|clove|formalin|dewormer|lugol|peroxide/i;
    const told = all.flatMap(({ card }) => [
      card.headline,
      ...card.steps,
      ...card.points.map((point) => point.join(': ')),
    ]);
    expect(told.filter((text) => guarded.test(text) && amount.test(text))).toEqual([]);
  });
});
