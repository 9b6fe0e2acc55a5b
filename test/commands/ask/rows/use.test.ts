import { describe, expect, it } from 'vitest';
import { solutionRows } from '../../../../commands/ask/rows/solution.ts';
import { useRows } from '../../../../commands/ask/rows/use.ts';
import { daysAmong, daysBetween } from '../../../../core/language/days-between.ts';
import { answered, asked, number, textOf } from './asked-row.ts';

/** 1 dKH in 100 L = 1.890 g Na2CO3 = 2.996 g NaHCO3 (IUPAC 2021). */
const use = (text: string) => answered(useRows, 'dose-use', text);
const daily = (text: string) => answered(useRows, 'dose-daily', text);

describe('what a tank uses a day', () => {
  it.each([
    ['alk went from 8.4 to 7.2 over 3 days, what does it use a day', 0.4],
    ['monday 8.4 wednesday 7.9 how much does my tank use a day', 0.25],
    ['alk 9.3 on monday, 7.5 on wednesday, no dosing, 150 gal, how much is it using', 0.9],
    ['kh 8.4 yesterday and 8.0 today, consumption?', 0.4],
    ['alk 8.4 on the 3rd, 7.6 on the 7th, nothing dosed, what does it use per 24 h', 0.2],
  ])('%s', (text, perDay) => {
    expect(number(use(text).headline, 'dKH')).toBeCloseTo(perDay, 2);
  });

  it('of calcium', () => {
    expect(number(use('calcium fell from 440 to 410 in 6 days, daily use?').headline, 'mg/L')).toBeCloseTo(
      5,
      1,
    );
  });

  // 10 g every other day are 5 g, 5 / 1.890 dKH in 100 L.
  it('by what went in every other day', () => {
    const text =
      'i dose 10 g soda ash every other day and alk went 8 to 8 in 4 days, 100 L, what does it use';
    expect(number(use(text).headline, 'dKH')).toBeCloseTo(5 / 1.89, 1);
  });

  it('asks for the time between', () => {
    expect(asked(useRows, 'dose-use', 'alk went from 9 to 7.5, what does the tank use')).toContain(
      'How much time',
    );
  });

  it('counts days, dates and hours from each other', () => {
    expect(daysBetween('friday', 'tuesday', 3)).toBe(4);
    expect(daysBetween('monday', 'today', 3)).toBe(2);
    expect(daysBetween('the 3rd', 'the 17th', 3)).toBe(14);
    expect(daysBetween('28 feb', '2 march', 3)).toBe(2);
    expect(daysBetween('9 am', '9 pm', 3)).toBe(0.5);
    expect(daysBetween('monday', 'monday', 3)).toBeUndefined();
    expect(daysAmong(['7am', 'sunday', 'tuesday', '7am'], 3)).toBe(2);
  });
});

describe('the dose of each day', () => {
  it('replaces a use that is known', () => {
    const given = daily('the tank uses 1.2 dkh a day, how much soda ash daily in 100 litres');
    expect(number(given.headline, 'g of')).toBeCloseTo(1.2 * 1.89, 1);
  });

  it.each([
    ['tank drops 5.6 dkh a week, 100 L, how much soda ash', 0.8 * 1.89],
    ['it loses 1.4 dkh every other day, 100 L, how much soda ash daily', 0.7 * 1.89],
  ])('counts by the time that was said: %s', (text, grams) => {
    expect(number(daily(text).headline, 'g of')).toBeCloseTo(grams, 1);
  });

  // Known miss: 0.5 dKH is taken for another use; asked in plain words, it is asked back.
  it.fails('of a bottle that says what it raises: 0.8 / 0.5 x 2.5 mL', () => {
    const given = daily('tank uses 0.8 dkh a day, 250 L, 1 ml per 100 L raises 0.5 dkh, how many ml a day');
    expect(number(given.headline, 'mL')).toBeCloseTo(4, 9);
  });

  it('is less where the level rises: 0.3 dKH are 0.567 g of soda ash, 7 mL of 80 g/L', () => {
    const text = 'alkalinity rises 0.3 dkh a day and i dose 20 ml a day, 100 L, soda ash 80 g/L';
    expect(daily(text).headline).toBe(
      'Dose less, for alkalinity rises: what 20 ml a day is too much by is worth 7 mL a day in 100 L.',
    );
  });

  it('asks once for the unit of the tank, whichever powder it is', () => {
    const text = 'uses 1.1 dkh a day, alk mix is 84 g/L, tank of 780, how many ml';
    expect(() => daily(text)).toThrow('in which unit');
  });

  // 0.1 dKH in 50 L is 1.783 mmol/L... 0.945 g Na2CO3 per 10 L and dKH: 0.0945 g in 1 mL, 189 g in 2 L; of NaHCO3 150 g/L.
  it('of a bottle to be made: each powder that can be', () => {
    const text = 'i want a 2 l jug of stock where 1 ml raises 50 l by 0.1 dkh, how many g';
    const { facts } = answered(solutionRows, 'solution', text);
    expect(facts.map(({ value }) => value).join(' ')).toMatch(
      /sodium bicarbonate cannot be that strong.* 189 g of sodium carbonate/,
    );
  });

  it('takes a powder weighed into the stock for no dose', () => {
    const text = 'mix is 1 kilo of ash in 10 l, tank pulls 1.1 dkh a day, 780 wet litres, how many ml';
    expect(number(daily(text).headline, 'mL')).toBeCloseTo((1.1 * 7.8 * 1.89) / 0.1, 0);
    expect(daily(text).headline).not.toContain('On top of');
  });

  it('in millilitres where the strength was said', () => {
    const given = daily('Eats 0.7 dkh a day, 140 L, soda ash 106 g/L. How many ml?');
    expect(number(given.headline, 'mL')).toBeCloseTo((0.7 * 1.4 * 1.89) / 0.106, 0);
    expect(given.steps[0]).toContain('only holds the level');
  });

  it('or says what it uses from two readings', () => {
    expect(daily('alk went from 8.4 to 7.2 over 3 days, what do I dose daily?').headline).toContain(
      '0.4 dKH',
    );
  });
});

describe('a stock solution', () => {
  it.each([
    ['I dissolved 500 g of soda ash in 5 L of water, strength per ml?', 2 * (100 / 105.99)],
    ['80 g of baking soda made up to 1 litre, how strong is that', 80 / 84.01],
  ])('%s', (text, meqPerMl) => {
    expect(number(textOf(answered(solutionRows, 'solution', text)), 'meq')).toBeCloseTo(meqPerMl, 2);
  });

  // 21.5 g in 100 g of water at 20 °C (handbook, from memory): 1000 x 21.5 / 121.5 = 177 g per litre.
  it('without a weight: how much dissolves', () => {
    const given = answered(solutionRows, 'solution', 'how much soda ash in a stock bottle');
    expect(given.facts[0]?.value).toMatch(/^about 176 g .*from memory/);
  });

  it('asks for the powder', () => {
    expect(asked(solutionRows, 'solution', 'how strong is my stock bottle')).toContain('Which powder');
  });
});

/** Ca(OH)2 37.05 g/eq: 0.5 dKH in 300 L are 53.5 meq. Saturated at 25 °C 0.0203 mol/L (Bates et al. 1956). */
describe('limewater', () => {
  it('against the use of the tank', () => {
    const text = '1 gal evaporates a day, can kalk in the top off cover 0.6 dkh a day in 90 gal';
    const given = answered(solutionRows, 'limewater', text);
    expect(given.headline).toMatch(/^Yes/);
    expect(number(given.headline, 'g of')).toBeCloseTo(0.6 * 0.35665 * 340.7 * 0.03705, 1);
    expect(textOf(given)).toContain('8.5');
  });

  it('in a vessel', () => {
    const given = answered(solutionRows, 'limewater', 'how much lime goes in a 20 L bucket of kalkwasser');
    expect(number(given.headline, 'to')).toBeCloseTo(0.0203 * 74.09 * 20, -1);
  });

  it('without a tank: what dissolves in what evaporates', () => {
    const text = 'kalk 3 g per l, evaporation 9 l a day, or is less all that dissolves';
    const given = answered(solutionRows, 'limewater', text);
    expect(number(given.headline, 'to')).toBeCloseTo(0.0203 * 74.09 * 9, 0);
  });

  it('without a number: its card, with the care it takes', () => {
    expect(textOf(answered(solutionRows, 'limewater', 'is kalk in the top off a good idea'))).toContain(
      'Caustic',
    );
  });
});
