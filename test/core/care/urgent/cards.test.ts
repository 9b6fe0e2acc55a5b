import { describe, expect, it } from 'vitest';
import { palytoxinCaution, palytoxinCleaning } from '../../../../core/corals/cautions.ts';
import { urgentCard, urgentIds } from '../../../../core/care/urgent/cards.ts';
import { dosesWithin } from '../medicine.ts';

/** Where hands go near mains and water: the plug or the breaker comes before the water. */
const MAINS = [
  'fire or sparks',
  'mains fault',
  'out of the water',
  'flood',
  'burst heater',
  'overheating',
  'cold water',
  'power cut',
  'oxygen loss',
  'overdose',
  'shredded anemone',
] as const;

describe.each(urgentIds)('%s', (id) => {
  const { first, steps, never, stop, sources, label } = urgentCard(id);

  it('has a first action, ordered steps, what not to do and when to stop', () => {
    for (const text of [first, stop, ...steps, ...never]) expect(text).toMatch(/^[A-Z].*[.?!]$/);
    expect(steps.length).toBeGreaterThanOrEqual(5);
    expect(never.length).toBeGreaterThan(0);
    expect(sources.length).toBeGreaterThan(0);
    expect(label.length).toBeLessThanOrEqual(40);
  });

  it('holds no dose of a medicine', () => expect(dosesWithin(urgentCard(id))).toEqual([]));
});

describe('mains', () => {
  it.each(MAINS)('%s: off before hands go in', (id) => {
    const { first, steps } = urgentCard(id);
    expect(`${first} ${steps[0] ?? ''}`).toMatch(/unplug|plug|breaker/i);
  });
});

describe('fire', () => {
  it('gets people out before anything else, and never with water', () => {
    const { first, never } = urgentCard('fire or sparks');
    expect(first).toMatch(/^People first: .*everybody out.*fire service/);
    expect(never.join(' ')).toMatch(/No water on anything electric/);
    expect(never.join(' ')).toMatch(/Do not go back in for animals/);
  });
});

/**
 * Palytoxin on surfaces: 1 part of household bleach to 10 of water for 30 minutes, as public-health guidance is remembered
 * (from memory; the part of Hamade et al. 2015 that was read holds the signs only).
 */
describe('zoanthid rock', () => {
  const { first, steps, never } = urgentCard('zoanthid rock');

  it('forbids heat, dry work and chemicals before anything else', () => {
    expect(first).toMatch(/^No heat, saw, dry brush, jet or chemicals/);
    expect(steps[0]).toMatch(/boil, bake, microwave, steam or pressure-wash/);
    expect(never.join(' ')).toMatch(/No peroxide.*zoanthids/);
  });

  it('bleaches surfaces and dead rock only: fresh, cold, 1 to 10, half an hour, and says it is from memory', () => {
    const cleaning = steps.find((step) => step.includes('bleach')) ?? '';
    expect(cleaning).toMatch(
      /surfaces, tools and dead rock: 1 part fresh household bleach to about 10 of cold water, 30 minutes/,
    );
    expect(cleaning).toMatch(/from memory/);
    expect(never.join(' ')).toMatch(/Bleach never hot, and never with acid, vinegar or ammonia/);
    expect(palytoxinCleaning.basis.map(({ kind }) => kind)).toEqual(['memory']);
    expect(palytoxinCaution.text).not.toMatch(/bleach/);
  });
});

describe('what has a caution of its own', () => {
  it.each([
    ['copper or medicine', /^Never in the reef itself.*shrimps/, /silicone keep copper/],
    ['untreated tap water', /^A conditioner made for chlorine and chloramine/, /chloramine does not/],
    [
      'mains fault',
      /^Hands out of the water: switch off at the breaker/,
      /RCD, GFCI.*drip loop.*extension lead/s,
    ],
    ['dying animal', /^Call a vet.*I give no way and no amount/, /freezer, boiling, flushing/],
  ] as const)('%s', (id, act, holds) => {
    const { first, steps, never } = urgentCard(id);
    expect(first).toMatch(act);
    expect([...steps, ...never].join('\n')).toMatch(holds);
    expect(steps).toHaveLength(5);
  });
});
