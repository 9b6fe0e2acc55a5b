import { describe, expect, it } from 'vitest';
import { dose, fact, problem, words } from './run.ts';

// 50 / 38 = 1.316. 1 dKH in 100 L = 2.996 g NaHCO3 (IUPAC 2021): 143.8 L 4.31 g, 189.3 L 5.67 g, 38 L 1.14 g, 50 L 1.50 g.
describe('/dose net', () => {
  it('dosing for 50 where 38 are in is 32 % too much', () => {
    const given = dose('net', { glass: '50 gal', volume: '38 gal', with: 'baking soda', goal: '+1 dKH' });
    expect(given.headline).toMatch(/holds 38 US gal is 32 % too much, \+1\.32 dKH where 1 dKH was meant/);
    expect(fact(given, 'sodium bicarbonate, +1 dKH, in US gal')).toBe('38 US gal: 4.3 g; 50 US gal: 5.7 g');
  });

  it('shows both where no unit was said', () => {
    const given = dose('net', { glass: '50', volume: '38', with: 'baking soda' });
    expect(fact(given, 'sodium bicarbonate, +1 dKH, in L')).toBe('38 L: 1.14 g; 50 L: 1.5 g');
    expect(words(given)).toMatch(/no unit was said/);
  });

  it('takes other units and other salts', () => {
    expect(dose('net', { glass: '100 x 50 x 50 cm', volume: '190 L' }).headline).toMatch(
      /250 L .* 32 % too much/,
    );
    // 20 mg/L x 1.25.
    const given = dose('net', { glass: '500 L', volume: '400 L', with: 'epsom salt', goal: '+20 ppm' });
    expect(given.headline).toMatch(/25 % too much, \+25 mg\/L where 20 ppm was meant/);
  });

  it.each([
    [{ glass: '38 gal', volume: '50 gal' }, 'glass'],
    [{ glass: '50 gal', volume: '38 gal', with: 'calcium chloride' }, 'with'],
    [{ glass: '50 gal', volume: '38 gal', goal: '0 dKH' }, 'goal'],
  ])('asks about %o', (input, field) => expect(problem('net', input).field).toBe(field));
});
