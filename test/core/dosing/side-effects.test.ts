import { describe, expect, it } from 'vitest';
import { type Compound, findCompound } from '../../../core/dosing/compound.ts';
import { ionRises, phMove, REEF, salinityRisePpt } from '../../../core/dosing/side-effects.ts';
import { alkMeqLFromUmolKg } from '../../../core/water/carbonate.ts';

function salt(name: string): Compound {
  const found = findCompound(name);
  if (found === undefined || !('name' in found)) throw new Error(name);
  return found;
}

/** PyCO2SYS 1.8.3.4 (Lueker 2000, Dickson 1990, Uppstrom 1974), S 35, 25 deg C, TA 2500, pH total 8.1, +500 umol/kg. */
const moves = [
  { name: 'sodium bicarbonate', expected: 8.0308 },
  { name: 'sodium carbonate', expected: 8.332 },
  { name: 'calcium hydroxide', expected: 8.5838 },
];

describe('phMove', () => {
  it.each(moves)('500 umol/kg from $name ends at pH $expected (PyCO2SYS)', ({ name, expected }) => {
    const move = phMove(salt(name), alkMeqLFromUmolKg(2500, REEF), alkMeqLFromUmolKg(500, REEF));
    expect(move.before).toBeCloseTo(8.1, 6);
    expect(Math.abs(move.after - expected)).toBeLessThanOrEqual(0.001);
  });

  it('decahydrate moves pH as the anhydrous salt does', () => {
    const [crystals, ash] = ['soda crystals', 'soda ash'].map((name) => phMove(salt(name), 2.5, 0.3));
    expect(crystals).toEqual(ash);
  });
});

describe('ionRises', () => {
  it('10 mg/L calcium from calcium chloride brings 17.69 mg/L chloride (2 x 35.45 / 40.078)', () => {
    const rises = ionRises(salt('calcium chloride dihydrate'), 36.6804, 1000);
    expect(rises.map(({ ion }) => ion)).toEqual(['Cl', 'Ca']);
    expect(rises[0]?.riseMgL).toBeCloseTo(17.69, 2);
    expect(rises[1]?.riseMgL).toBeCloseTo(10, 3);
  });

  it('3 mg/L nitrate from potassium nitrate brings 1.9 mg/L potassium (39.0983 / 62.004)', () => {
    const rises = ionRises(salt('potassium nitrate'), 1.1108, 227.1247);
    expect(rises.find(({ ion }) => ion === 'K')?.riseMgL).toBeCloseTo(1.892, 2);
  });
});

describe('salinityRisePpt', () => {
  it('leaves crystal water out: 203.295 g of MgCl2·6H2O in 1000 L is 95.205 g of salt', () => {
    expect(salinityRisePpt(salt('magnesium chloride hexahydrate'), 203.295, 1000)).toBeCloseTo(
      95.205 / 1023.34,
      5,
    );
  });

  it('equals the mass for a salt without crystal water', () => {
    expect(salinityRisePpt(salt('soda ash'), 1023.34, 1000)).toBeCloseTo(1, 4);
  });
});
