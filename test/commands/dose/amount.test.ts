import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { doseCommands } from '../../../commands/dose.ts';
import { compoundsFor } from '../../../core/dosing/compound.ts';
import { parameter } from '../../../core/water/parameter.ts';
import { dose, fact, problem, words } from './run.ts';
import { limitsOf } from '../../../core/water/limits.ts';

const example = { of: 'alkalinity', now: '7.2', goal: '8.4', with: 'sodium carbonate', volume: '75 gal' };

/**
 * Doses worked by hand from molar masses (NaHCO3 84.007, Na2CO3 105.988, MgCl2·6H2O 203.30, NaNO3 84.99, NaH2PO4 119.98),
 * 1 meq/L = 2.804 dKH, US gal 3.785412 L.
 */
const worked = [
  {
    what: 'the example',
    input: example,
    headline: ['6.4 g of sodium carbonate', '3.2 g a day for 2 days', '283.9 L'],
    not: ['10.2 g of'],
  },
  {
    what: 'alkalinity 5.3 to 8 without a volume',
    input: { of: 'kh', now: '5.3', goal: '8', with: 'baking soda' },
    headline: ['8.07 g of sodium bicarbonate per 100 L', '2.69 g a day for 3 days'],
    not: ['5.1 g of'],
  },
  {
    what: 'magnesium in net, not gross, gallons',
    input: { of: 'mg', now: '1150', goal: '1350', with: 'magnesium chloride hexahydrate', volume: '100 gal' },
    headline: ['632 g of magnesium chloride hexahydrate', '316 g a day for 2 days', '378.5 L'],
    not: ['760 g', 'in one day', 'sulfate'],
  },
  {
    what: 'nitrate to 1 mg/L',
    input: { of: 'no3', now: '0', goal: '1', with: 'sodium nitrate', volume: '60 gal' },
    headline: ['0.31 g of sodium nitrate'],
    not: [],
  },
  {
    what: 'nitrate to 3 mg/L, a milligram a day',
    input: { of: 'no3', now: '0', goal: '3', with: 'sodium nitrate', volume: '60 gal' },
    headline: ['0.93 g of sodium nitrate', '0.31 g a day for 3 days'],
    not: [],
  },
  {
    what: 'soda ash for 1.8 dKH in 150 gal',
    input: { of: 'alk', now: '7.5', goal: '9.3', with: 'soda ash', volume: '150 gal' },
    headline: ['19.3 g of sodium carbonate', '9.7 g on day 1 and 9.6 g on day 2', '567.8 L'],
    not: ['tsp', 'teaspoon'],
  },
  {
    what: '+1 dKH in 38 gal of water, not in the 50 gal of glass',
    input: { of: 'alkalinity', goal: '+1 dKH', with: 'baking soda', volume: '38 gal' },
    headline: ['4.3 g of sodium bicarbonate', '143.8 L'],
    not: ['5.7 g'],
  },
  {
    what: '+1 dKH if 50 gal were water',
    input: { of: 'alkalinity', goal: '+1 dKH', with: 'baking soda', volume: '50 gal' },
    headline: ['5.6 g of sodium bicarbonate', '189.3 L'],
    not: [],
  },
];

const ph = (salt: string) =>
  fact(dose('amount', { ...example, with: salt }), 'pH right after a day’s portion');

describe('/dose amount', () => {
  it.each(worked)('$what', ({ input, headline, not }) => {
    const answer = dose('amount', input);
    for (const text of headline) expect(answer.headline).toContain(text);
    for (const text of not) expect(words(answer)).not.toContain(text);
  });

  it('shows the working, the assumptions and what else moves', () => {
    const text = words(dose('amount', example));
    for (const part of [
      '1.2 dKH',
      '121.5 meq',
      '105.99 g/mol with 2 eq',
      '1.890 g per dKH per 100 L',
      'US gallons',
      'taken as net water',
      'a pure, dry salt',
      'common practice',
    ]) {
      expect(text).toContain(part);
    }
    expect(fact(dose('amount', example), 'Also adds')).toMatch(/^sodium 9\.8 mg\/L/);
    expect(fact(dose('amount', example), 'Or, for the same rise')).toContain('sodium bicarbonate 10.2 g');
  });

  it('never invents a volume', () => {
    const answer = dose('amount', { of: 'kh', now: '5.3', goal: '8', with: 'baking soda' });
    expect(answer.read.join()).toContain('no volume given, so this is per 100 L');
    expect(fact(answer, 'Or, for the same rise')).toContain('sodium carbonate 5.1 g');
    expect(answer.steps.join()).toMatch(/Dissolve .* slowly .* daily dosing running/s);
  });

  it('bicarbonate lowers pH a little, carbonate and lime lift it (PyCO2SYS signs)', () => {
    expect(ph('baking soda')).toMatch(/^−0\.0\d/);
    expect(ph('soda ash')).toMatch(/^\+0\.1/);
    expect(ph('limewater powder')).toMatch(/^\+0\.2/);
  });

  it('reads both readings in the unit one of them names', () => {
    const answer = dose('amount', { ...example, now: '2.5 meq/L', goal: '3' });
    expect(answer.read[0]).toBe('alkalinity now 2.5 meq/L (7.01 dKH), goal 3 meq/L (8.41 dKH)');
  });

  it('purity and a slower pace count', () => {
    const answer = dose('amount', { ...example, now: '8', goal: '9', purity: '50 %', pace: 'gentle' });
    expect(answer.headline).toContain(
      '10.6 g of sodium carbonate (50 % pure) in all, 5.3 g a day for 2 days',
    );
    expect(dose('amount', { ...example, pace: '0.3 dKH a day' }).headline).toContain('for 4 days');
  });
});

describe('calcium chloride of unknown form', () => {
  const answer = dose('amount', {
    of: 'ca',
    now: '360',
    goal: '430',
    with: 'calcium chloride',
    volume: '180 litres',
  });

  it('gives the mass that is safe for every form, and names all three', () => {
    expect(answer.headline).toContain('34.8 g of calcium chloride in all, 17.4 g a day for 2 days');
    expect(answer.headline).toContain('safe for every form');
    expect(fact(answer, 'If calcium chloride anhydrous')).toBe('34.8 g');
    expect(fact(answer, 'If calcium chloride dihydrate')).toBe('46.2 g');
    expect(fact(answer, 'If calcium chloride hexahydrate')).toBe('68.8 g');
    expect(answer.cautions.join()).toContain('+93 instead of +70');
    expect(words(answer)).toContain('180 L');
  });

  it('warns of the heat, the alkalinity part and salinity first', () => {
    expect(answer.cautions.join()).toMatch(/Never mix/);
    expect(answer.dangers.join()).toMatch(
      /gets hot.*never water to the powder.*Anhydrous.*burn skin and eyes/s,
    );
    expect(answer.steps[0]).toMatch(/salinity first/);
  });

  it('is plain once the form is said', () => {
    const known = dose('amount', {
      of: 'ca',
      now: '360',
      goal: '430',
      with: 'calcium chloride dihydrate',
      volume: '180 L',
    });
    expect(known.headline).toContain('46.2 g of calcium chloride dihydrate');
    expect(words(known)).not.toContain('safe for every form');
  });
});

describe('a phosphate dose too small to weigh', () => {
  const answer = dose('amount', { of: 'po4', now: '0', goal: '0.03', with: 'NaH2PO4', volume: '60 gal' });

  it('is 8.6 mg, given as millilitres of a stock and fed first', () => {
    expect(answer.headline).toMatch(/^8\.6 mg of monosodium phosphate.*stock solution/);
    expect(answer.steps.join('\n')).toMatch(
      /feed a little more.*\n.*dissolve 1 g and fill up to 1 L.*\n.*add 4\.3 mL a day for 2 days/,
    );
    expect(answer.steps.join()).not.toMatch(/Dissolve 4\.3 mg/);
  });

  it('is split at 0.02 mg/L a day (common practice)', () => {
    expect(answer.headline).toContain('4.3 mg a day for 2 days');
  });
});

describe('no dose', () => {
  it('doubts an impossible reading before any number', () => {
    const answer = dose('amount', { of: 'ca', now: '560', goal: '450', with: 'calcium chloride' });
    expect(answer.headline).toMatch(/^Retest first/);
    expect(words(answer)).not.toMatch(/\d g\b/);
  });

  it('nothing lowers a reading, least of all acid', () => {
    const answer = dose('amount', { of: 'alk', now: '14', goal: '9', with: 'baking soda', volume: '75 gal' });
    expect(answer.headline).toMatch(/^No dose/);
    expect(answer.dangers.join()).toMatch(/Never pour acid/);
    expect(words(answer)).not.toMatch(/vinegar|muriatic/i);
  });

  it('lime is never given as powder', () => {
    const answer = dose('amount', { ...example, now: '7', goal: '8', with: 'kalk', volume: '90 gal' });
    expect(answer.steps[0]).toMatch(
      /^Never as powder: bring 4\.5 g once as clear limewater, at least 2\.99 L/,
    );
    expect(answer.dangers.join()).toMatch(/caustic.*Lime in the eye/s);
    expect(answer.cautions.join()).toMatch(/H318/);
  });
});

describe('asks back', () => {
  it.each([
    {
      what: 'no compound',
      input: { of: 'alk', now: '7', goal: '8' },
      field: 'with',
      choice: 'sodium bicarbonate',
    },
    {
      what: 'a compound for something else',
      input: { ...example, with: 'epsom salt' },
      field: 'with',
      choice: 'sodium carbonate',
    },
    {
      what: 'an unknown mix',
      input: { ...example, with: 'reef booster' },
      field: 'with',
      choice: 'sodium carbonate',
    },
    {
      what: 'a volume without a unit',
      input: { ...example, volume: '75' },
      field: 'volume',
      choice: '75 US gal',
    },
    {
      what: 'an alkalinity that is dKH or meq/L',
      input: { ...example, now: '3.2', goal: '4' },
      field: 'now',
      choice: '3.2 meq/L',
    },
  ])('$what', ({ input, field, choice }) => {
    const asked = problem('amount', input);
    expect(asked.field).toBe(field);
    expect(asked.choices).toContain(choice);
  });

  it.each([
    { what: 'a missing reading', input: { of: 'alk', goal: '8', with: 'soda ash' }, field: 'now' },
    { what: 'a goal no reef has', input: { ...example, goal: '18 dKH' }, field: 'goal' },
    {
      what: 'a rise no reef survives',
      input: { of: 'alk', goal: '+15 dKH', with: 'soda ash' },
      field: 'goal',
    },
    { what: 'a pace above the usual limit', input: { ...example, pace: '2 dKH' }, field: 'pace' },
    { what: 'a pace of nothing', input: { ...example, pace: '0 dKH' }, field: 'pace' },
    { what: 'a purity of nothing', input: { ...example, purity: '0 %' }, field: 'purity' },
    { what: 'pH', input: { ...example, of: 'ph' }, field: 'of' },
    { what: 'salinity', input: { ...example, of: 'salinity' }, field: 'of' },
  ])('refuses $what', ({ input, field }) => {
    expect(problem('amount', input).field).toBe(field);
  });
});

describe('every dosable parameter and compound', () => {
  const ids = [
    'alkalinity',
    'calcium',
    'magnesium',
    'potassium',
    'strontium',
    'bromide',
    'iodine',
    'nitrate',
    'phosphate',
  ] as const;
  const pairs = ids.flatMap((id) => compoundsFor(id).map((compound) => ({ id, compound })));

  it('prints numbers only, and always a caution', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...pairs),
        fc.double({ min: 0.05, max: 1, noNaN: true }),
        fc.double({ min: 5, max: 50_000, noNaN: true }),
        ({ id, compound }, share, litres) => {
          const { unit, kitResolution } = parameter(id);
          const { usual: target } = limitsOf(id);
          const now = target[0] * (1 - 0.3 * share);
          fc.pre(target[0] - now > kitResolution);
          const answer = dose('amount', {
            of: id,
            now: `${now} ${unit}`,
            goal: `${target[0]} ${unit}`,
            with: compound.name,
            volume: `${litres} L`,
          });
          expect(words(answer)).not.toMatch(/NaN(?!O)|Infinity|undefined|unknown|\de-\d/);
          expect(answer.cautions.length).toBeGreaterThan(0);
        },
      ),
    );
  });
});

describe('the examples of the help', () => {
  it.each(doseCommands.map((command) => ({ command, name: command.path.join(' ') })))(
    '/$name: $command.example',
    ({ command }) => {
      const typed = command.example.slice(`/${command.path.join(' ')} `.length);
      const input = Object.fromEntries(
        typed
          .split(/\s(?=\w+:)/)
          .map((pair) => [pair.slice(0, pair.indexOf(':')), pair.slice(pair.indexOf(':') + 1)]),
      );
      expect(command.run(input, { nowMs: 0 }).headline.length).toBeGreaterThan(20);
      expect(command.summary.length).toBeLessThanOrEqual(100);
    },
  );
});
