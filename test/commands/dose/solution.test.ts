import { describe, expect, it } from 'vitest';
import { dose, fact, problem, words } from './run.ts';

describe('/dose solution', () => {
  it('84.01 g of baking soda made up to 1 L is 1 meq per mL (1 mol/L)', () => {
    const answer = dose('solution', { with: 'baking soda', amount: '84.0058 g', volume: '1 L' });
    expect(answer.headline).toContain(
      '84.01 g of sodium bicarbonate per litre: each mL raises 100 L by 0.028 dKH',
    );
    expect(fact(answer, 'Each mL holds')).toBe('1 meq');
  });

  it('says the millilitres for a dose: 0.5 dKH per 100 L is 1.498 g, 18.7 mL of 80 g/L', () => {
    const answer = dose('solution', { with: 'baking soda', amount: '80 g', volume: '1 L', goal: '+0.5 dKH' });
    expect(fact(answer, 'Per 100 L of tank, alkalinity up by 0.5 dKH')).toBe('18.7 mL');
  });

  it('splits a dose by the pace: 2 dKH per 100 L is 5.99 g, 74.9 mL of 80 g/L, on two days', () => {
    const answer = dose('solution', { with: 'baking soda', amount: '80 g', volume: '1 L', goal: '+2 dKH' });
    expect(fact(answer, 'Per 100 L of tank, alkalinity up by 2 dKH')).toBe(
      '74.8 mL in all, 37.4 mL a day for 2 days',
    );
  });

  it('makes it weaker where it cannot all dissolve, and says the limit and where it is from', () => {
    const answer = dose('solution', { with: 'baking soda', amount: '120 g', volume: '1 L' });
    expect(answer.headline).toMatch(
      /^120 g per litre is more than dissolves\. Make it weaker, with 70 g in 1 L\./,
    );
    expect(words(answer)).toMatch(/70 g of sodium bicarbonate per litre: each mL raises 100 L by/);
    expect(fact(answer, 'What dissolves')).toBe(
      'about 88 g per litre are sure to dissolve at 20 °C (handbook value from memory)',
    );
    expect(answer.sources).toContain('memory');
    expect(dose('solution', { with: 'baking soda', amount: '85 g', volume: '1 L' }).headline).not.toContain(
      'more than dissolves',
    );
  });

  it('never makes limewater stronger than it can be (0.0203 mol/L, Bates et al. 1956)', () => {
    const answer = dose('solution', { with: 'lime', amount: '100 g', volume: '1 L', goal: '+0.5 dKH' });
    expect(answer.headline).toMatch(/Make it weaker, with 1\.2 g in 1 L\./);
    expect(words(answer)).toMatch(/1\.2 g of calcium hydroxide per litre: each mL/);
    expect(fact(answer, 'What dissolves')).toMatch(/about 1\.5 g/);
    expect(answer.sources).toContain('bates56');
    // 0.5 dKH is 0.1783 meq/L, 17.83 meq in 100 L; 37.046 mg of lime a meq: 660.6 mg, 550 mL of 1.2 g/L.
    expect(fact(answer, 'Per 100 L of tank, alkalinity up by 0.5 dKH')).toBe('550 mL');
    expect(problem('effect', { with: 'lime', amount: '10 mL', strength: '100 g/L' }).field).toBe('strength');
  });

  it('10 g of sodium nitrate in 500 mL is 14.6 mg of nitrate per mL (72.95 %)', () => {
    const answer = dose('solution', { with: 'sodium nitrate', amount: '10 g', volume: '500 mL' });
    expect(fact(answer, 'Each mL holds')).toBe('14.6 mg of nitrate');
  });

  it.each([
    { input: { with: 'calcium chloride', amount: '80 g', volume: '1 L' }, field: 'with' },
    { input: { with: 'soda ash', amount: '80 g', volume: '1' }, field: 'volume' },
    {
      input: { with: 'soda ash', amount: '80 g', volume: '1 L', now: '9 dKH', goal: '8 dKH' },
      field: 'goal',
    },
  ])('asks about $field', ({ input, field }) => {
    expect(problem('solution', input).field).toBe(field);
  });
});
