import { describe, expect, it } from 'vitest';
import { dose, problem, words } from './run.ts';

const label = { of: 'kh', dose: '1 mL', per: '100 L', raises: '0.5 dKH' };

/** Plain proportion, by hand; the powder by IUPAC 2021: 0.5 dKH in 100 L is 0.945 g Na2CO3 or 1.498 g NaHCO3. */
describe('/dose bottle', () => {
  it.each([
    [{ use: '0.8 dKH a day', volume: '250 L' }, /^4 mL of it a day in 250 L replaces 0\.8 dKH/],
    [{ use: '5.6 dKH a week', volume: '250 L' }, /^4 mL of it a day/],
    [{ use: '13.8 dKH a day' }, /^Retest first: 13\.8 dKH of alkalinity a day is more than any tank uses/],
    [{ goal: '8.5', now: '8', volume: '300 L' }, /^3 mL of it in 300 L/],
    // 2 dKH at 1 dKH a day (common practice).
    [{ goal: '9', now: '7', volume: '100 L' }, /^4 mL in all, 2 mL a day for 2 days/],
    [{ amount: '4 mL', volume: '200 L' }, /^4 mL of it raises alkalinity by 1 dKH in 200 L/],
    [{ with: 'soda ash', per: '10 L', bottle: '2 L' }, /^189 g of sodium carbonate made up to 2 L \(94\.5/],
    [{ with: 'baking soda' }, /^sodium bicarbonate cannot be that strong: it would take 1498 g per litre/],
  ])('%o', (input, headline) => expect(dose('bottle', { ...label, ...input }).headline).toMatch(headline));

  it('lowers nothing, and defers to the label of the product', () => {
    expect(dose('bottle', { ...label, goal: '7', now: '9' }).headline).not.toMatch(/mL/);
    expect(words(dose('bottle', { ...label, goal: '+1' }))).toContain('label of the product comes first');
  });

  it.each([
    { input: { dose: 'a bit' }, field: 'dose' },
    { input: { raises: '0.5 furlongs' }, field: 'raises' },
    { input: { amount: '3' }, field: 'amount' },
  ])('asks about $field', ({ input, field }) => {
    expect(problem('bottle', { ...label, ...input }).field).toBe(field);
  });
});
