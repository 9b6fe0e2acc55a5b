import { describe, expect, it } from 'vitest';
import { labelled } from '../../../commands/dose/label-advice.ts';
import { dose, fact, problem, words } from './run.ts';

describe('/dose label', () => {
  // 2 mL x 283.9 L / 100 L = 5.68 mL; drawn up by 0.1 mL, down.
  it('scales a label to the tank, and begins with less', () => {
    const input = { what: 'amino acids', amount: '2 mL', per: '100 L', volume: '75 gal' };
    const given = dose('label', input);
    expect(given.headline).toBe(
      'The label comes to 5.6 mL in 283.9 L: that is the most, so begin with half of it.',
    );
    expect(fact(given, 'to begin with')).toMatch(/^2\.83 mL/);
    expect(words(given)).toMatch(/what the label says; not oftener/);
  });

  // 2 x 283.9 / 100 = 5.68 drops, a quarter of it 1.42; 1 g x 2.839 = 2.839 g.
  it.each([
    ['2 drops', /5 drops/, /^1 drop\b/],
    ['1 g', /2\.83 g/, /^0\.7 g/],
    ['0.1 drops', /less than a drop/, /less than a drop/],
  ])('rounds %s down', (amount, most, first) => {
    const given = dose('label', { what: 'iodine or traces', amount, per: '100 L', volume: '75 gal' });
    expect(given.headline).toMatch(most);
    expect(fact(given, 'to begin with')).toMatch(first);
    expect(words(given)).toMatch(/poisonous in small amounts/);
  });

  it('gives no amount of its own', () => {
    const given = dose('label', { what: 'carbon source' });
    expect(given.headline).toMatch(/^I work out no amount of a carbon source/);
    expect(words(given)).toMatch(/suffocates fish/);
    for (const what of labelled) expect(words(dose('label', { what }))).not.toMatch(/\d ?(?:mL|g|drops)\b/);
  });

  it('never gives one of a medicine, whatever the label says', () => {
    const given = dose('label', { what: 'medicine', amount: '5 mL', per: '100 L', volume: '300 L' });
    expect(given.headline).toMatch(/^I never give a dose of a medicine/);
    expect(words(given)).not.toMatch(/\d ?mL/);
  });

  it.each([
    [{ what: 'amino acids', amount: '5 mL' }, 'per'],
    [{ what: 'amino acids', per: '100 L' }, 'amount'],
    [{ what: 'amino acids', amount: 'a cap', per: '100 L' }, 'amount'],
    [{ what: 'amino acids', amount: '0 mL', per: '100 L' }, 'amount'],
    [{ what: 'snake oil' }, 'what'],
  ])('asks about %o', (input, field) => expect(problem('label', input).field).toBe(field));
});
