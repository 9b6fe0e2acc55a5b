import { describe, expect, it } from 'vitest';
import { dose, fact, problem, words } from './run.ts';

describe('/dose limewater in the top-off', () => {
  const answer = dose('limewater', { amount: '1 gal', volume: '90 gal', goal: '0.6 dKH/day' });

  it('covers 0.6 dKH a day with 2.70 g, 0.713 g per litre', () => {
    expect(answer.headline).toBe(
      'Yes: 2.7 g of calcium hydroxide a day, 0.713 g per litre of top-off, covers 0.6 dKH a day in 340.7 L.',
    );
  });

  it('carries 154 meq, about 1.27 dKH and 9 mg/L calcium; the need is 72.9 meq and brings 4.3 mg/L', () => {
    expect(fact(answer, 'The top-off can carry')).toMatch(
      /^154 meq a day: 1\.2[67] dKH and 9(\.1)? mg\/L calcium$/,
    );
    expect(fact(answer, 'The tank uses')).toBe('72.9 meq a day');
    expect(fact(answer, 'Calcium with it')).toContain('4.3 mg/L');
    expect(fact(answer, 'Or as saturated limewater')).toMatch(
      /^1\.(79|8) L of it with (2|1\.99) L of plain fresh water$/,
    );
  });

  it('warns against full strength, pouring, and a changing evaporation', () => {
    expect(fact(answer, 'Strength')).toMatch(
      /^47 % of saturation: full strength would overdose by 0\.6[67]\d? dKH a day/,
    );
    expect(answer.dangers.join()).toMatch(/caustic.*eye.*Drip it slowly.*never pour it in at once/s);
    expect(answer.cautions.join()).toMatch(/evaporation changes/);
    expect(answer.steps[0]).toContain('less than computed');
  });

  it('says no when the top-off is too little', () => {
    expect(dose('limewater', { amount: '1 L', volume: '90 gal', goal: '0.6 dKH' }).headline).toMatch(
      /^No: .* at most 0\.334 dKH of the 0\.6 dKH/,
    );
  });

  it('refuses a use of nothing', () => {
    expect(problem('limewater', { amount: '1 gal', volume: '90 gal', goal: '0 dKH' }).field).toBe('goal');
  });

  it('without the use it gives the most, and says to measure first', () => {
    const most = dose('limewater', { amount: '1 gal', volume: '90 gal' });
    expect(most.headline).toMatch(/^At most 154 meq a day/);
    expect(most.steps.join()).toContain('/dose use');
  });
});

describe('/dose limewater for a batch', () => {
  const answer = dose('limewater', { amount: '30 L' });

  it('30 L hold about 45 to 50 g, the rest settles', () => {
    expect(answer.headline).toMatch(
      /^30 L of limewater cannot hold more than about 45 to 50 g of calcium hydroxide, 13 to 20 level teaspoons; more only settles/,
    );
    expect(fact(answer, 'Clear liquid')).toBe('about 40.6 to 44.8 meq per litre');
  });

  it('never says double strength, and never to shake before dosing', () => {
    expect(words(answer)).not.toMatch(/double/i);
    expect(words(answer)).toMatch(/Do not shake it before dosing/);
    expect(words(answer)).toMatch(/leave the last centimetres/);
  });

  it('holds less when warmer', () => {
    expect(dose('limewater', { amount: '30 L', temperature: '86 F' }).headline).toContain('about 43 to 48 g');
    expect(problem('limewater', { amount: '30 L', temperature: '50 C' }).field).toBe('temperature');
  });
});
