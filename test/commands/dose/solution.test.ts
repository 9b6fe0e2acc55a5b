import { describe, expect, it } from 'vitest';
import { dose, fact, problem } from './run.ts';

describe('/dose solution', () => {
  it('84.01 g of baking soda made up to 1 L is 1 meq per mL (1 mol/L)', () => {
    const answer = dose('solution', { with: 'baking soda', amount: '84.0058 g', volume: '1 L' });
    expect(answer.headline).toContain(
      '84.01 g of sodium bicarbonate per litre: each mL holds 1 meq and raises 100 L by 0.028 dKH',
    );
  });

  it('says the millilitres for a dose: 0.5 dKH per 100 L is 1.498 g, 18.7 mL of 80 g/L', () => {
    const answer = dose('solution', { with: 'baking soda', amount: '80 g', volume: '1 L', goal: '+0.5 dKH' });
    expect(fact(answer, 'Per 100 L of tank, alkalinity up by 0.5 dKH')).toBe('18.7 mL (1.5 g of powder)');
  });

  it('warns when it cannot all dissolve (96 g/L at 20 °C, from memory)', () => {
    const answer = dose('solution', { with: 'baking soda', amount: '120 g', volume: '1 L' });
    expect(answer.headline).toMatch(/^That will not all dissolve: about 96 g per litre/);
    expect(answer.sources).toContain('memory');
    expect(dose('solution', { with: 'baking soda', amount: '90 g', volume: '1 L' }).headline).not.toContain(
      'not all dissolve',
    );
  });

  it('10 g of sodium nitrate in 500 mL is 14.6 mg of nitrate per mL (72.95 %)', () => {
    expect(dose('solution', { with: 'sodium nitrate', amount: '10 g', volume: '500 mL' }).headline).toContain(
      'each mL holds 14.6 mg of nitrate',
    );
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
