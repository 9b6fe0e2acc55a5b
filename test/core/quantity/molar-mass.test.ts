import { describe, expect, it } from 'vitest';
import { molarMass, type Atoms } from '../../../core/quantity/molar-mass.ts';

// Computed from the IUPAC 2021 table (Pure Appl. Chem. 94:573-600), checked to 1e-5 relative.
const table: { formula: string; atoms: Atoms; gPerMol: number }[] = [
  { formula: 'NaHCO3', atoms: { Na: 1, H: 1, C: 1, O: 3 }, gPerMol: 84.0058 },
  { formula: 'Na2CO3', atoms: { Na: 2, C: 1, O: 3 }, gPerMol: 105.9875 },
  { formula: 'CaCl2', atoms: { Ca: 1, Cl: 2 }, gPerMol: 110.978 },
  { formula: 'CaCO3', atoms: { Ca: 1, C: 1, O: 3 }, gPerMol: 100.086 },
  { formula: 'CaO', atoms: { Ca: 1, O: 1 }, gPerMol: 56.077 },
  { formula: 'MgSO4.7H2O', atoms: { Mg: 1, S: 1, O: 11, H: 14 }, gPerMol: 246.466 },
  { formula: 'KH2PO4', atoms: { K: 1, H: 2, P: 1, O: 4 }, gPerMol: 136.0841 },
  { formula: 'SrCl2.6H2O', atoms: { Sr: 1, Cl: 2, H: 12, O: 6 }, gPerMol: 266.61 },
  { formula: 'NaBr', atoms: { Na: 1, Br: 1 }, gPerMol: 102.8938 },
  { formula: 'KI', atoms: { K: 1, I: 1 }, gPerMol: 166.0028 },
  { formula: 'H3BO3', atoms: { H: 3, B: 1, O: 3 }, gPerMol: 61.831 },
];

describe('molarMass', () => {
  it.each(table)('$formula is $gPerMol g/mol', ({ atoms, gPerMol }) => {
    expect(Math.abs(molarMass(atoms) / gPerMol - 1)).toBeLessThanOrEqual(1e-5);
  });

  it('is 0 for nothing', () => expect(molarMass({})).toBe(0));
});
