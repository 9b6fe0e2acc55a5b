import { describe, expect, it } from 'vitest';
import { answerTo } from '../said-answer.ts';

/** 12 mg/L of calcium in a week are 1.71 a day; CaCl2·2H2O (147.01) holds 27.26 % Ca (IUPAC 2021). */
describe('a use and its time', () => {
  it('of a week, however it is said, is a seventh of it a day', () => {
    for (const time of ['the week', 'in the week', 'over a week', 'per wk', 'weekly']) {
      const text = `calcium falls [12](rate calcium) ${time} in [180 liters](system), how much calcium chloride dihydrate each day`;
      const { headline } = answerTo('dose-daily', text);
      const grams = ((12 / 7) * 180) / 1000 / 0.2726;
      expect(headline, time).toContain(`${grams.toFixed(2)} g of calcium chloride dihydrate a day`);
    }
  });

  it('that was not said is asked where it cannot well be a day', () => {
    const text =
      'calcium falls [12](change calcium) in [180 liters](system), how much calcium chloride each day';
    const given = answerTo('dose-daily', text);
    expect(given.headline).toBe('Is that what it falls in a day, or in a week?');
    expect(given.next.map(({ label }) => label).slice(0, 2)).toEqual(['In a day', 'In a week']);
    expect(given.next[1]?.input).toMatchObject({ use: '12 per 7 days' });
  });

  it('is taken as a day where it is small enough', () => {
    const text = 'my tank uses [0.6](change alkalinity), [100 l](system), how much soda ash each day';
    expect(answerTo('dose-daily', text).headline).toContain('0.6 dKH of alkalinity a day');
  });
});
