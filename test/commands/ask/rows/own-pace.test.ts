import { describe, expect, it } from 'vitest';
import { answerTo } from '../said-answer.ts';
import { textOf } from './asked-row.ts';

const dose = (most: string) =>
  answerTo(
    'dose-amount',
    `alk [7.1](now alkalinity), goal [8.4](wanted alkalinity), [412 L](system), baking soda, ${most}`,
  );

/** 1.3 dKH / 2.804 x 412 L x 84.007 g = 16.05 g (IUPAC 2021). */
describe('the asker’s own limit for a day', () => {
  it('is used where it is slower: 1.3 dKH at 0.5 are three days', () => {
    const { headline, facts } = dose('cap the rise at [0.5](rate alkalinity) per day');
    expect(headline).toMatch(/^16 g of sodium bicarbonate in all, .* on day 3/);
    expect(facts[0]?.value).toMatch(/at your 0\.5 dKH a day$/);
  });

  it('is not used where it is faster, and that is said', () => {
    const given = dose('max [2 dkh](limit alkalinity) per day');
    expect(given.headline).toContain('for 2 days');
    expect(textOf(given)).toContain('faster than alkalinity is moved here: at most 1 dKH a day is kept');
  });

  it('is no use of the tank', () => {
    expect(dose('it uses [0.5](rate alkalinity) per day').headline).not.toContain('at your');
  });
});
