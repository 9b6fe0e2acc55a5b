import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Compound, compounds, findCompound } from '../../../core/dosing/compound.ts';
import { amountG, riseFrom, supplyPerG } from '../../../core/dosing/dose.ts';
import { Problem } from '../../../core/problem.ts';
import { meqLFromDkh } from '../../../core/water/alkalinity.ts';
import type { ParameterId } from '../../../core/water/parameter.ts';

function salt(formula: string): Compound {
  const found = findCompound(formula);
  if (found === undefined || !('name' in found)) throw new Error(formula);
  return found;
}
const anhydrous = salt('calcium chloride anhydrous');

/** Mass fractions from IUPAC 2021 weights, g per g, six digits. */
const fractions: readonly { formula: string; of: ParameterId; expected: number }[] = [
  { formula: 'CaCl2·2H2O', of: 'calcium', expected: 0.272625 },
  { formula: 'calcium chloride anhydrous', of: 'calcium', expected: 0.361135 },
  { formula: 'Ca(OH)2', of: 'calcium', expected: 0.540922 },
  { formula: 'MgCl2·6H2O', of: 'magnesium', expected: 0.119555 },
  { formula: 'MgSO4·7H2O', of: 'magnesium', expected: 0.098614 },
  { formula: 'KCl', of: 'potassium', expected: 0.524469 },
  { formula: 'SrCl2·6H2O', of: 'strontium', expected: 0.328645 },
  { formula: 'KI', of: 'iodine', expected: 0.764472 },
  { formula: 'NaBr', of: 'bromide', expected: 0.776568 },
  { formula: 'KNO3', of: 'nitrate', expected: 0.61328 },
  { formula: 'NaNO3', of: 'nitrate', expected: 0.729512 },
  { formula: 'KH2PO4', of: 'phosphate', expected: 0.697876 },
  { formula: 'Na2HPO4', of: 'phosphate', expected: 0.669002 },
];

describe('supplyPerG', () => {
  it.each(fractions)('$of in $formula is $expected (IUPAC 2021)', ({ formula, of, expected }) => {
    expect(Math.abs(supplyPerG(salt(formula), of) / 1000 - expected)).toBeLessThanOrEqual(1e-6);
  });
});

/** Worked doses for pure salts, 100 L; rises in dKH for alkalinity, mg/L else; stoichiometry with IUPAC 2021. */
const worked: readonly { formula: string; of: ParameterId; rise: number; expected: number }[] = [
  { formula: 'NaHCO3', of: 'alkalinity', rise: 1, expected: 2.9961 },
  { formula: 'Na2CO3', of: 'alkalinity', rise: 1, expected: 1.89 },
  { formula: 'CaCl2·2H2O', of: 'calcium', rise: 10, expected: 3.668 },
  { formula: 'calcium chloride anhydrous', of: 'calcium', rise: 10, expected: 2.7691 },
  { formula: 'MgCl2·6H2O', of: 'magnesium', rise: 10, expected: 8.3643 },
  { formula: 'MgSO4·7H2O', of: 'magnesium', rise: 10, expected: 10.1405 },
  { formula: 'KNO3', of: 'nitrate', rise: 1, expected: 0.1631 },
  { formula: 'NaNO3', of: 'nitrate', rise: 1, expected: 0.1371 },
  { formula: 'KH2PO4', of: 'phosphate', rise: 0.1, expected: 0.0143 },
  { formula: 'KCl', of: 'potassium', rise: 10, expected: 1.9067 },
  { formula: 'SrCl2·6H2O', of: 'strontium', rise: 1, expected: 0.3043 },
];

const canonical = (of: ParameterId, rise: number): number => (of === 'alkalinity' ? meqLFromDkh(rise) : rise);

describe('amountG', () => {
  it.each(worked)('$formula: $of +$rise in 100 L takes $expected g', ({ formula, of, rise, expected }) => {
    expect(Math.abs(amountG(salt(formula), of, canonical(of, rise), 100) - expected)).toBeLessThanOrEqual(
      5.1e-5,
    );
  });

  it('+70 mg/L calcium in 180 L: 34.9, 46.2 and 68.9 g by form (molar masses 110.98, 147.01, 219.08)', () => {
    expect(amountG(anhydrous, 'calcium', 70, 180)).toBeCloseTo(34.89, 1);
    expect(amountG(salt('CaCl2·2H2O'), 'calcium', 70, 180)).toBeCloseTo(46.22, 1);
    expect(amountG(salt('calcium chloride hexahydrate'), 'calcium', 70, 180)).toBeCloseTo(68.87, 1);
  });

  it('takes more of an impure powder: half as pure, twice the mass', () => {
    expect(amountG(anhydrous, 'calcium', 70, 180, 0.5)).toBeCloseTo(
      2 * amountG(anhydrous, 'calcium', 70, 180),
      9,
    );
  });

  it.each([
    { rise: -1, volume: 100, purity: 1 },
    { rise: Number.NaN, volume: 100, purity: 1 },
    { rise: 1, volume: 0, purity: 1 },
    { rise: 1, volume: Infinity, purity: 1 },
    { rise: 1, volume: 100, purity: 0 },
    { rise: 1, volume: 100, purity: 1.01 },
  ])('refuses rise $rise in $volume L at purity $purity', ({ rise, volume, purity }) => {
    expect(() => amountG(anhydrous, 'calcium', rise, volume, purity)).toThrow(Problem);
  });

  it('refuses a compound that does not hold what is wanted', () => {
    expect(() => amountG(anhydrous, 'magnesium', 10, 100)).toThrow(/does not raise magnesium/);
  });
});

describe('round trip', () => {
  it('a dose raises by what it was worked out for, for every compound', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...compounds),
        fc.double({ min: 1e-3, max: 500, noNaN: true }),
        fc.double({ min: 1, max: 1e5, noNaN: true }),
        fc.double({ min: 0.02, max: 1, noNaN: true }),
        (compound, rise, volumeL, purity) => {
          for (const id of compound.raises) {
            const grams = amountG(compound, id, rise, volumeL, purity);
            if (grams > 1e6) continue;
            expect(riseFrom(compound, id, grams, volumeL, purity) / rise).toBeCloseTo(1, 9);
            expect(amountG(compound, id, rise, 2 * volumeL, purity) / grams).toBeCloseTo(2, 9);
          }
        },
      ),
    );
  });
});
