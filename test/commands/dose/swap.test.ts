import { describe, expect, it } from 'vitest';
import { dose, fact, problem, words } from './run.ts';

// Molar masses IUPAC 2021: NaHCO3 84.006 (1 eq), Na2CO3 105.988 (2 eq), CaCl2 110.98, CaCl2.2H2O 147.01.
describe('/dose swap', () => {
  it('100 g of baking soda is 63.1 g of soda ash: (105.988 / 2) / 84.006 = 0.631', () => {
    const given = dose('swap', { with: 'baking soda', instead: 'soda ash', amount: '100 g', used: '50 g' });
    // 50 / 63.1 = 0.792.
    expect(given.headline).toBe(
      'Not half: 100 g of sodium bicarbonate equals 63.1 g of sodium carbonate, so 50 g is 21 % too little.',
    );
    expect(fact(given, 'grams for grams')).toMatch(/^0\.631 g/);
    expect(words(given)).toMatch(/pH is not/);
    expect(words(given)).toMatch(/sting eyes/);
  });

  it.each([
    [{ used: '63 g' }, /^Yes: 100 g/],
    [{ used: '80 g' }, /27 % too much\.$/],
    [{}, /^Not half: 100 g .*63\.1 g of sodium carbonate\.$/],
  ])('judges %o', (extra, headline) =>
    expect(dose('swap', { with: 'baking soda', instead: 'soda ash', ...extra }).headline).toMatch(headline),
  );

  it('works for what else is dosed: 200 g of the dihydrate is 200 x 110.98 / 147.01 = 151 g dry', () => {
    const input = { with: 'calcium chloride dihydrate', instead: 'calcium chloride anhydrous' };
    const given = dose('swap', { ...input, amount: '200 g' });
    expect(given.headline).toMatch(/^200 g .* equals 151 g of calcium chloride anhydrous\.$/);
    expect(words(given)).toMatch(/hot as it dissolves/);
    expect(words(given)).not.toMatch(/Baking/);
    expect(dose('swap', { ...input, used: '200 g', amount: '200 g' }).headline).toMatch(
      /^No: .* 32 % too much/,
    );
  });

  it('never lets lime in as powder', () =>
    expect(dose('swap', { with: 'soda ash', instead: 'calcium hydroxide' }).steps.join(' ')).toMatch(
      /Never as powder/,
    ));

  it.each([
    [{ with: 'baking soda', instead: 'calcium chloride' }, 'instead'],
    [{ with: 'baking soda', instead: 'epsom salt' }, 'instead'],
    [{ with: 'baking soda', instead: 'sodium bicarbonate' }, 'instead'],
    [{ with: 'calcium chloride', instead: 'calcium chloride dihydrate' }, 'with'],
    [{ with: 'snake oil', instead: 'soda ash' }, 'with'],
  ])('asks about %o', (input, field) => expect(problem('swap', input).field).toBe(field));
});
