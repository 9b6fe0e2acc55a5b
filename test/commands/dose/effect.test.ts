import { describe, expect, it } from 'vitest';
import { dose, fact, problem, words } from './run.ts';

describe('/dose effect', () => {
  it('19.3 g of soda ash is 1.8 dKH in 150 US gal (molar mass 105.988, 2 eq)', () => {
    expect(dose('effect', { with: 'soda ash', amount: '19.3 g', volume: '150 gal' }).headline).toContain(
      'alkalinity by 1.8 dKH in 567.8 L',
    );
  });

  it('the dose for 50 gal gives 1.32 dKH in 38 gal', () => {
    expect(dose('effect', { with: 'baking soda', amount: '5.67 g', volume: '38 gal' }).headline).toContain(
      '1.32 dKH',
    );
  });

  it('someone else’s 14 teaspoons of soda ash: a range from 3.5 to 7 dKH, not a number, and not in a day', () => {
    const answer = dose('effect', { with: 'soda ash', amount: '14 tsp', volume: '150 gal' });
    expect(answer.headline).toContain('roughly 38 to 76 g');
    expect(answer.headline).toContain('3.5 to 7 dKH');
    expect(answer.steps.join()).toMatch(/Not in one day.*does not suit another/s);
    expect(answer.read.join()).toContain('common practice');
  });

  // 2 x 1.5 x 4 = 12 g and 2 x 2 x 5 = 20 g; 12 g / 84.007 = 142.8 meq, / 110 L x 2.804 = 3.6 dKH.
  it('heaped teaspoons are 1.5 to 2 level ones', () => {
    const answer = dose('effect', { with: 'bicarb', amount: '2 heaped teaspoons', volume: '110 L' });
    expect(answer.headline).toContain('roughly 12 to 20 g');
    expect(answer.headline).toContain('by 3.6 to 6.1 dKH');
    expect(answer.read.join()).toContain('1.5 to 2 level ones (common practice, no source)');
  });

  // 5 g of CaCl2 (40.078/110.98) in 60 L is 30 mg/L, 3.5 g of the hexahydrate (40.078/219.07) 10.7.
  it('says where it ends, and spoons of calcium chloride as a range over its forms', () => {
    const answer = dose('effect', { with: 'calcium chloride', amount: '1 tsp', volume: '60 L', now: '400' });
    expect(answer.headline).toContain('from 400 mg/L to 411 to 430 mg/L');
  });

  it('100 g of baking soda equals 63 g of soda ash: 0.631, not half', () => {
    const answer = dose('effect', { with: 'baking soda', amount: '100 g' });
    expect(fact(answer, 'Same from sodium carbonate')).toBe(
      '63.1 g (0.631 g for each g of sodium bicarbonate)',
    );
    expect(answer.cautions.join()).toContain('0.631 g of sodium carbonate, not half: half falls 21 % short');
    expect(words(answer)).not.toMatch(/twice as strong/);
  });

  it('50 g of fully baked soda is what 79 g of baking soda is', () => {
    expect(
      fact(dose('effect', { with: 'baked baking soda', amount: '50 g' }), 'Same from sodium bicarbonate'),
    ).toMatch(/^79\.3 g/);
  });

  it('an unknown form is a range with each form named', () => {
    const answer = dose('effect', { with: 'calcium chloride', amount: '46.2 g', volume: '180 L' });
    expect(answer.headline).toContain('47 to 93 mg/L');
    expect(fact(answer, 'calcium chloride dihydrate')).toBe('70 mg/L');
  });

  it('millilitres need a strength; saturated limewater has its own', () => {
    expect(
      dose('effect', { with: 'kno3', amount: '50 mL', strength: '20 g/L', volume: '100 L' }).headline,
    ).toContain('6.13 mg/L');
    expect(problem('effect', { with: 'kno3', amount: '50 mL', volume: '100 L' }).field).toBe('strength');
    expect(dose('effect', { with: 'limewater', amount: '1 L', volume: '100 L' }).headline).toContain(
      '1.1 to 1.3 dKH',
    );
  });

  it('an amount nobody should add is called that', () => {
    expect(dose('effect', { with: 'soda ash', amount: '5 kg', volume: '100 L' }).steps[0]).toMatch(
      /^Do not add this/,
    );
  });

  it.each([
    { input: { with: 'soda ash', amount: '14' }, field: 'amount' },
    { input: { with: 'epsom salt', amount: '2 tsp' }, field: 'amount' },
    { input: { with: 'soda ash', amount: '10 g', of: 'calcium' }, field: 'with' },
    { input: { with: 'snake oil', amount: '10 g' }, field: 'with' },
  ])('asks about $field of $input', ({ input, field }) => {
    expect(problem('effect', input).field).toBe(field);
  });
});
