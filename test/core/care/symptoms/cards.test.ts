import { describe, expect, it } from 'vitest';
import { MOST_QUESTIONS } from '../../../../core/care/symptoms/card.ts';
import { symptomCard, symptomIds } from '../../../../core/care/symptoms/cards.ts';
import { groupIds } from '../../../../core/care/symptoms/group.ts';
import { signs } from '../../../../core/care/symptoms/sign.ts';
import { sourcesNamed } from '../../../../core/named-sources.ts';
import { sources } from '../../../../core/sources.ts';
import { dosesWithin } from '../medicine.ts';

describe.each(symptomIds)('%s', (id) => {
  const card = symptomCard(id);
  const causes = Object.keys(card.causes);

  it('says what to do first, what not to do and when to ask', () => {
    for (const text of [card.first, card.stop, ...card.steps, ...card.never])
      expect(text).toMatch(/^[A-Z].*[.]$/);
    expect(card.steps.length).toBeGreaterThan(0);
    expect(card.never.length).toBeGreaterThan(0);
    expect(card.sources).toContain('practice');
    expect(card.label.length).toBeLessThanOrEqual(60);
  });

  it('names two causes or more, each with why', () => {
    expect(causes.length).toBeGreaterThanOrEqual(2);
    for (const { name, why } of Object.values(card.causes))
      expect(`${name}${why}`.length).toBeGreaterThan(10);
  });

  it('asks two questions at most, whose answers move known causes', () => {
    expect(card.questions.length).toBeLessThanOrEqual(MOST_QUESTIONS);
    expect(card.questions.length).toBeGreaterThan(0);
    for (const { ask, choices } of card.questions) {
      const all = Object.values(choices);
      expect(ask).toMatch(/\?$/);
      expect(all.length).toBeGreaterThanOrEqual(2);
      expect(all.length).toBeLessThanOrEqual(8);
      for (const { up = [], down = [], label, because } of all) {
        expect(causes).toEqual(expect.arrayContaining([...up, ...down]));
        expect(label.length).toBeLessThanOrEqual(60);
        expect(because).not.toBe('');
      }
      expect(all.some(({ up = [], down = [] }) => up.length + down.length > 0)).toBe(true);
    }
  });

  it('names a paper wherever it calls something published', () => {
    for (const text of card.published ?? []) {
      expect(text).toContain('published: ');
      expect(
        sourcesNamed([text]).some((code) => sources[code].kind === 'published'),
        text,
      ).toBe(true);
    }
  });

  it('holds no dose of a medicine', () => expect(dosesWithin(card)).toEqual([]));
});

describe('the cards together', () => {
  it('fill every group with no more than one menu', () => {
    for (const group of groupIds) {
      const held = symptomIds.filter((id) => symptomCard(id).group === group);
      expect(held.length).toBeGreaterThan(0);
      expect(held.length).toBeLessThanOrEqual(9);
    }
  });

  it('use every sign the log and the corals can give', () => {
    const used = new Set(
      symptomIds.flatMap((id) =>
        Object.values(symptomCard(id).causes).flatMap(({ signs: each = [] }) => each),
      ),
    );
    expect(signs.filter((sign) => !used.has(sign))).toEqual([]);
  });
});
