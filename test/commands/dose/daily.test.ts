import { describe, expect, it } from 'vitest';
import { dose, fact, problem, words } from './run.ts';

// 1 dKH in 100 L = 1.890 g Na2CO3 = 2.996 g NaHCO3; Ca is 27.26 % of CaCl2.2H2O (IUPAC 2021); 1 US gal = 3.785412 L.
describe('/dose daily', () => {
  it('1.2 dKH a day in 100 US gal is 1.2 x 3.785 x 1.890 = 8.58 g of soda ash, rounded down', () => {
    const input = { of: 'alk', use: '1.2 dKH a day', with: 'soda ash', volume: '100 gal' };
    const given = dose('daily', input);
    expect(given.headline).toMatch(
      /^To replace 1\.2 dKH of alkalinity a day: 8\.5 g of sodium carbonate a day, /,
    );
    expect(words(given)).toMatch(/only holds the level/);
    expect(words(given)).toMatch(/More than 1 dKH a day is a lot/);
  });

  it('15 mg/L a week in 300 L is 0.015 x 300 / 7 / 0.2726 = 2.358 g of the dihydrate', () =>
    expect(
      fact(
        dose('daily', { of: 'ca', use: '15 ppm a week', volume: '300 L' }),
        'calcium chloride dihydrate a day',
      ),
    ).toMatch(/^2\.35 g/));

  it.each(['0.3 dKH a day', '0.3', '2.1 dKH a week', '0.9 dKH in 3 days', '0.0125 dKH per hour'])(
    '"%s" is the same use',
    (use) =>
      expect(dose('daily', { of: 'alkalinity', use, with: 'baking soda' }).headline).toMatch(
        /0\.89 g of sodium bicarbonate a day, per 100 L/,
      ),
  );

  it('works nothing out from a use that no tank has', () => {
    const given = dose('daily', { of: 'alkalinity', use: '8 dKH a day', volume: '100 L' });
    expect(given.headline).toMatch(/^Retest first/);
    expect(words(given)).not.toMatch(/\d g\b/);
  });

  it.each([
    [{ of: 'pH', use: '0.1' }, 'of'],
    [{ of: 'alkalinity', use: '0 dKH' }, 'use'],
    [{ of: 'alkalinity', use: '0.5 dKH', with: 'epsom salt' }, 'with'],
  ])('asks about %o', (input, field) => expect(problem('daily', input).field).toBe(field));
});
