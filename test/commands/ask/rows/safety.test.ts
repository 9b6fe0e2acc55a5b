import { describe, expect, it, test } from 'vitest';
import { safetyRows } from '../../../../commands/ask/rows/safety.ts';
import { BLEACH_GAS } from '../../../../core/care/hazards.ts';
import { NO_MEDICINE } from '../../../../core/care/urgent/people.ts';
import { urgentCard } from '../../../../core/care/urgent/cards.ts';
import type { Kind } from '../../../../core/language/kinds.ts';
import { rowAnswer } from './asked.ts';

const safe = (kind: Kind, text: string) => rowAnswer(safetyRows, kind, text);

describe('medicine', () => {
  it.each([
    'how much prazi for 40 gal',
    'copper dose for velvet in 20 gallons',
    'double the fenbendazole?',
    'can i give my tang an antibiotic',
  ])('no amount: %s', (text) => {
    const given = safe('medicine', text);
    expect(given?.headline).toBe(NO_MEDICINE);
    expect(JSON.stringify(given)).not.toMatch(/\d ?(?:mg|ml|drops)\b/);
  });

  test('in the reef itself: never, and what to do where it is in', () => {
    const given = safe('medicine', 'someone put a copper treatment in my reef');
    expect(given?.headline).toBe(urgentCard('copper or medicine').first);
  });

  test('what was seen has its first step', () => {
    const given = safe('medicine', 'my clownfish has white spots, how much copper');
    expect(given?.next.map(({ label }) => label)).toContain('White spots or dust on fish');
  });

  test('peroxide: no amount, and the safer way', () => {
    const given = safe('medicine', 'how much peroxide for bryopsis in 40 gal');
    expect(given?.headline).toContain('I work out no amount of peroxide');
    expect(given?.dangers.join(' ')).toContain('Never on zoanthids');
  });

  test('a disinfectant is for no tank', () => {
    expect(safe('medicine', 'how much bleach against the algae in my 30 gal')?.headline).toContain(
      'Not into a tank',
    );
  });
});

describe('mixing', () => {
  it.each([
    'can i mix bleach and vinegar',
    'bleach and ammonia together to clean the sump?',
    'peroxide and bleach both on the rock, ok?',
    'muriatic acid then bleach in the same bucket',
  ])('a poisonous gas: %s', (text) => {
    expect(safe('mixing', text)?.headline).toBe(`No. ${BLEACH_GAS}`);
  });

  it.each([
    'calcium and alk at the same time?',
    'soda ash and calcium chloride in one jug',
    'how long between the two part doses, two part from a bag',
  ])('two that turn to chalk: %s', (text) => {
    expect(safe('mixing', text)?.headline).toContain('at different times or places');
  });

  test('a pair nothing is known of is left to the others', () => {
    expect(safe('mixing', 'does iodine react with amino acids if i put both')).toBeUndefined();
  });
});

describe('handling', () => {
  it.each([
    'is it safe to boil rock with zoas on it',
    'may i scrub palys off a rock with a brush',
    'can i bake my live rock in the oven',
  ])('rock and zoanthids worked on: %s', (text) => {
    expect(safe('handling', text)?.headline).toBe(urgentCard('zoanthid rock').first);
  });

  it.each([
    ['can i touch zoas with bare hands', 'palytoxin'],
    // UN GHS H319 for sodium carbonate (generic data sheet)
    ['gloves for soda ash?', 'eye protection'],
    ['muriatic acid for pumps, what protection?', 'Gloves, eye protection, fresh air'],
    ['is it safe to reach in with the heater plugged in', 'mains'],
    ['foxface in the net, thick gloves?', 'thick wet gloves'],
    ['can i hold a nem', 'Wear gloves where you have a cut'],
  ])('%s: %s', (text, words) => {
    expect(safe('handling', text)?.headline).toContain(words);
  });
});

test.each([
  'how do i put a clownfish out of its misery',
  'clove oil how many drops for 1 liter',
  'is freezing a fish cruel',
])('the end of an animal is a vet’s work: %s', (text) => {
  const given = safe('euthanasia', text);
  expect(given?.headline).toBe(urgentCard('dying animal').first);
  expect(given?.dangers.join(' ')).toContain('No clove oil');
});

describe('whether it is safe to handle, beside chemicals and animals (common practice, no source)', () => {
  it.each([
    ['do i need goggles dippin with iodine', /^Yes, gloves and goggles for any dip/],
    ['gloves on for the coral dip or is that over the top', /^Yes, gloves and goggles for any dip/],
    ['does blue light from the lamp hurt eyes', /^Looking at the lit tank is harmless/],
    ['is led light bad for my eyes', /^Looking at the lit tank is harmless/],
    ['superglue on fingers, no biggie right', /^On skin it is mostly harmless/],
  ])('%s', (text, words) => expect(safe('handling', text)?.headline).toMatch(words));
});
