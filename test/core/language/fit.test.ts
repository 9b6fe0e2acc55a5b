import { describe, expect, it } from 'vitest';
import { fitKinds } from '../../../core/language/fit.ts';
import { cardTemperature, fitCards } from '../../../core/language/fit-cards.ts';
import { fitRoles } from '../../../core/language/fit-roles.ts';
import { fitStory } from '../../../core/language/fit-story.ts';
import type { Line } from '../../../core/language/labelled.ts';
import { modelBytes, modelIn, type Model } from '../../../core/language/model-file.ts';
import { openReader } from '../../../core/language/reading.ts';

/** Invented lines: what is learnt of them is checked on words they share, not on what keepers write. */
const lines: readonly Line[] = [
  { text: 'my heater is too small', kind: 'equipment', card: 'heater' },
  { text: 'is this heater big enough', kind: 'equipment', card: 'heater' },
  { text: 'the skimmer foams too much', kind: 'equipment', card: 'skimmer' },
  { text: 'skimmer foam is wet', kind: 'equipment', card: 'skimmer' },
  { text: 'raise alk to 9', kind: 'dose-amount', roles: 'raise alk to [9](wanted alkalinity)' },
  { text: 'raise alk to 8', kind: 'dose-amount', roles: 'raise alk to [8](wanted alkalinity)' },
  { text: 'alk is 7 now', kind: 'readings-ok', roles: 'alk is [7](now alkalinity) now' },
  { text: 'alk is 6 now', kind: 'readings-ok', roles: 'alk is [6](now alkalinity) now' },
];

const batch = { head: { batch: 'invented', voices: 'one' }, lines };
const cardTexts = [{ kind: 'equipment', card: 'skimmer', texts: ['a column of froth'] }] as const;

function model(): Model {
  const thresholds = { answer: 0.5, margin: 0.1, danger: 0.5, maybeDanger: 0.1, far: 0.1 };
  return {
    sentences: 'x',
    thresholds,
    story: fitStory([batch]),
    kinds: fitKinds(lines),
    cards: fitCards([batch], cardTexts),
    ...fitRoles(lines, ({ kind }) => [{ name: kind, probability: 0.9 }]),
  };
}

describe('weights', () => {
  it('are the same of the same lines, byte for byte', () =>
    expect(modelBytes(model())).toEqual(modelBytes(model())));

  it('come back from their bytes', () => expect(modelIn(modelBytes(model()))).toEqual(model()));

  it('cut short are no model', () =>
    expect(() => modelIn(modelBytes(model()).slice(0, -1))).toThrow('cut short'));

  it('name kinds, the card below a kind and the part of a number', () => {
    const { read } = openReader(modelBytes(model()));
    const heater = read('heater small?');
    expect(heater.kinds[0]?.name).toBe('equipment');
    expect(heater.cards('equipment')[0]?.name).toBe('heater');
    expect(heater.cards('readings-ok')).toEqual([]);
    expect(read('froth in the column').cards('equipment')[0]?.name).toBe('skimmer');
    expect(read('raise alk to 9').said.map(({ part, of }) => `${part} ${of}`)).toEqual(['wanted alkalinity']);
    expect(read('alk is 7 now').said.map(({ part }) => part)).toEqual(['now']);
  });
});

/** A message that means the heater, guessed as this card with nine in ten. */
function guessed(name: 'heater' | 'skimmer') {
  const isRight = name === 'heater';
  return { card: 'heater', guessed: { heater: isRight ? 0.9 : 0.1, skimmer: isRight ? 0.1 : 0.9 } };
}

function many(times: number, name: 'heater' | 'skimmer') {
  return Array.from({ length: times }, () => guessed(name));
}

describe('the temperature of cards', () => {
  it('is one where nine in ten are right and say so', () =>
    expect(cardTemperature([...many(9, 'heater'), ...many(1, 'skimmer')])).toBeCloseTo(1, 6));

  it('is hotter where half are right that said nine in ten', () =>
    expect(cardTemperature([...many(5, 'heater'), ...many(5, 'skimmer')])).toBeGreaterThan(2));
});
