import { describe, expect, it } from 'vitest';
import { dosingRows } from '../../../../commands/ask/rows/dosing.ts';
import { overdoseRows } from '../../../../commands/ask/rows/overdose.ts';
import { answered, asked, number, textOf } from './asked-row.ts';

/**
 * Weights by IUPAC 2021: 1 dKH is 10 mg CaO/L = 0.3567 meq/L; Na2CO3 52.99 g/eq, NaHCO3 84.01 g/eq, so that 1 dKH in 100 L
 * is 1.890 g of the one and 2.996 g of the other; CaCl2·2H2O (147.01) holds 27.26 % Ca, MgSO4·7H2O (246.47) 9.861 % Mg.
 */
const amount = (text: string) => answered(dosingRows, 'dose-amount', text);
const effect = (text: string) => answered(dosingRows, 'dose-effect', text);

describe('how much to dose', () => {
  it.each([
    ['raise alk from 7.2 to 8.2 in 100 litres with soda ash', 1.89],
    ['alk 7.5 to 8.5 in 300 litres, baking soda', 3 * 2.996],
    ['Magnesium is 1250 and I want 1350, 100 litres, epsom salt', 10 / 0.09861],
  ])('%s', (text, grams) => {
    expect(number(amount(text).headline, 'g of') / grams).toBeCloseTo(1, 1);
  });

  it('of a bottle by its own words: 2 dKH in 128 L, where 1 mL lifts 50 L by 0.1, are 51.2 mL', () => {
    const given = amount('my bottle: 1 ml raises 50 l by 0.1 dkh. alk 7 now, want 9, 128 L, how much');
    expect(number(given.headline, 'mL in all')).toBeCloseTo((2 / 0.1) * (128 / 50), 1);
  });

  it('names what else shall rise, one press away, and what raises it', () => {
    const given = amount('ca 390 should be 420, alk 7.5 should be 8.5, 200 litres');
    expect(textOf(given) + given.next.map(({ label }) => label).join()).toMatch(/calcium|alkalinity/);
    expect(given.next.some(({ command }) => command === 'dose amount')).toBe(true);
  });

  it('asks for the goal, and never takes where it was for one', () => {
    expect(asked(dosingRows, 'dose-amount', 'alk dropped from 9 to 7.5, soda ash, 75 gal')).toContain(
      'should it be',
    );
  });

  it('answers what else was said of the dose', () => {
    expect(amount('raise alk from 7 to 8 in 200 L with soda ash all at once').dangers.join()).toContain(
      'Not all at once',
    );
    expect(textOf(amount('alk 7.5 to 8.5 in 300 litres, baking soda, my buddy uses 2 tsp'))).toContain(
      'Somebody else',
    );
  });

  it('judges a pace without asking for a goal', () => {
    expect(amount('how fast can i raise calcium').headline).toContain('50 mg/L of calcium a day');
  });

  it('works out no amount of what has a label', () => {
    expect(amount('how much vodka should i dose in 100 gal').headline).toContain('carbon source');
    expect(amount('how much peroxide per gallon').headline).toContain('no amount of peroxide');
  });
});

describe('what an amount does', () => {
  it.each([
    ['what does 20 g of soda ash do in 150 gal', 'dKH', 20 / 1.89 / 5.678],
    [
      'put 30 g of calcium chloride dihydrate in 200 L, how much will that raise it',
      'mg/L',
      (30 * 272.6) / 200,
    ],
    ['30 g of baking soda in 250 L does what', 'dKH', 30 / 2.996 / 2.5],
  ])('%s', (text, unit, rise) => {
    expect(number(effect(text).headline, unit)).toBeCloseTo(rise, 1);
  });

  it('of a bottle by its own words: 20 mL, where 1 mL lifts 100 L by 0.05 dKH, lift 200 L by 0.5', () => {
    const given = effect('put 20 ml in 200 l, 1 ml raises 100 l by 0.05 dkh, what did it do');
    expect(number(given.headline, 'dKH')).toBeCloseTo(0.5, 9);
  });

  it('takes a form that stands apart from its name: CaCl2·2H2O', () => {
    const given = effect('what does 30 g of calcium chloride do in 200 l, dihydrate i think');
    expect(number(given.headline, 'mg/L')).toBeCloseTo((30 * 272.6) / 200, 0);
  });

  it('shows what was read beside it', () => {
    const given = effect('i added 20 g of soda ash to 150 gal and it went from 7.4 to 8.1');
    expect(textOf(given)).toContain('You read: 7.4, then 8.1');
  });

  it('weighs one salt for the other: 100 g NaHCO3 is 63.1 g Na2CO3', () => {
    const given = effect('the recipe says 100 g baking soda, I put in 50 g soda ash instead');
    expect(given.headline).toContain('63.1 g of sodium carbonate');
    expect(given.headline).toContain('21 % too little');
  });

  it('is first aid where it went in by mistake', () => {
    const given = effect('oops, accidentally dumped 100 g of soda ash in my 300 L tank');
    expect(given.headline).toMatch(/^Stop everything that adds it/);
    expect(number(textOf(given).split('raises alkalinity by')[1] ?? '', 'dKH')).toBeCloseTo(
      100 / 1.89 / 3,
      0,
    );
  });

  it('is raised where it only fell: no alarm for what nobody put in', () => {
    const text = 'alk dropped to 6, want 8, sodium bicarbonate, 100 L';
    expect(number(answered(overdoseRows, 'overdose', text).headline, 'g of') / (2 * 2.996)).toBeCloseTo(1, 1);
    expect(() => answered(overdoseRows, 'overdose', 'alk dropped to 6, sodium bicarbonate')).toThrow(
      'what should it be',
    );
    expect(answered(overdoseRows, 'overdose', 'dumped in too much soda ash, alk 14').headline).toMatch(
      /^Stop/,
    );
  });

  it('asks which powder', () => {
    expect(asked(dosingRows, 'dose-effect', 'i put 20 ml in, 75 gal, what does it do')).toContain(
      'Which powder',
    );
  });
});
