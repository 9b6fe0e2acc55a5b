import { describe, expect, it } from 'vitest';
import {
  type Compound,
  compoundMolarMass,
  compoundNames,
  compoundNote,
  compounds,
  compoundsFor,
  findCompound,
} from '../../../core/dosing/compound.ts';

function only(text: string): Compound {
  const found = findCompound(text);
  if (found === undefined || !('name' in found)) throw new Error(`${text} is not one compound`);
  return found;
}

/** Sums of IUPAC 2021 standard atomic weights, g/mol, worked out apart from this project. */
const molarMasses = [
  { formula: 'NaHCO3', expected: 84.0058 },
  { formula: 'Na2CO3', expected: 105.9875 },
  { formula: 'calcium chloride anhydrous', expected: 110.978 },
  { formula: 'CaCl2·2H2O', expected: 147.008 },
  { formula: 'Ca(OH)2', expected: 74.092 },
  { formula: 'MgCl2·6H2O', expected: 203.295 },
  { formula: 'MgSO4·7H2O', expected: 246.466 },
  { formula: 'KNO3', expected: 101.1023 },
  { formula: 'NaNO3', expected: 84.9938 },
  { formula: 'KH2PO4', expected: 136.0841 },
  { formula: 'Na2HPO4', expected: 141.9573 },
  { formula: 'KCl', expected: 74.5483 },
  { formula: 'SrCl2·6H2O', expected: 266.61 },
  { formula: 'NaBr', expected: 102.8938 },
  { formula: 'KI', expected: 166.0028 },
];

describe('molar masses of the compounds', () => {
  it.each(molarMasses)('$formula weighs $expected g/mol (IUPAC 2021)', ({ formula, expected }) => {
    expect(Math.abs(compoundMolarMass(only(formula)) - expected)).toBeLessThanOrEqual(5e-5);
  });

  it('hexahydrate and decahydrate agree with handbook weights 219.08 and 286.14 (CRC, from memory) to 0.01', () => {
    expect(Math.abs(compoundMolarMass(only('calcium chloride hexahydrate')) - 219.08)).toBeLessThan(0.015);
    expect(Math.abs(compoundMolarMass(only('soda crystals')) - 286.14)).toBeLessThan(0.015);
  });
});

/**
 * Charge of each ion, phosphate as H2PO4 (the zero level of alkalinity, Dickson et al. 2007 ch. 2): a salt is neutral,
 * so what is left over is the negative charge of its alkalinity.
 */
const charge = {
  Na: 1,
  K: 1,
  Ca: 2,
  Mg: 2,
  Sr: 2,
  Cl: -1,
  SO4: -2,
  Br: -1,
  I: -1,
  NO3: -1,
  PO4: -1,
} as const;

describe('ions and alkalinity', () => {
  it.each(compounds.map((compound) => ({ compound, name: compound.name })))(
    '$name: charge balances with alkalinity',
    ({ compound }) => {
      let sum = 0;
      for (const [ion, count] of Object.entries(compound.ions))
        sum += charge[ion as keyof typeof charge] * count;
      expect(sum).toBe(compound.alkEqPerMol);
    },
  );

  it.each(compounds.map((compound) => ({ compound, name: compound.name })))(
    '$name: crystal water and ions are in the formula',
    ({ compound }) => {
      expect(compound.atoms.H ?? 0).toBeGreaterThanOrEqual(2 * compound.water);
      for (const element of ['Na', 'K', 'Ca', 'Mg', 'Sr', 'Cl', 'Br', 'I'] as const) {
        expect(compound.ions[element] ?? 0).toBe(compound.atoms[element] ?? 0);
      }
      expect(compound.dicPerMol).toBe(compound.atoms.C ?? 0);
    },
  );
});

const forms = (text: string) =>
  [findCompound(text)].flat().map((found) => (found !== undefined && 'name' in found ? found.name : ''));

describe('findCompound', () => {
  it.each([
    ['baking soda', 'sodium bicarbonate'],
    ['Sodium Hydrogencarbonate', 'sodium bicarbonate'],
    ['soda ash', 'sodium carbonate'],
    ['baked baking soda', 'sodium carbonate'],
    ['my oven baked baking soda', 'sodium carbonate'],
    ['Epsom salt', 'magnesium sulfate heptahydrate'],
    ['magnesium chloride', 'magnesium chloride hexahydrate'],
    ['CaCl₂·2H₂O', 'calcium chloride dihydrate'],
    ['calcium chloride dihydrate flakes', 'calcium chloride dihydrate'],
    ['kalkwasser', 'calcium hydroxide'],
    ['pickling lime powder', 'calcium hydroxide'],
    ['NaH2PO4', 'monosodium phosphate'],
    ['soda ash monohydrate', 'sodium carbonate monohydrate'],
  ])('%s is %s', (text, name) => {
    expect(only(text).name).toBe(name);
  });

  it('leaves calcium chloride and washing soda open', () => {
    expect(forms('calcium chloride')).toEqual([
      'calcium chloride anhydrous',
      'calcium chloride dihydrate',
      'calcium chloride hexahydrate',
    ]);
    expect(forms('washing soda')).toEqual(['sodium carbonate', 'sodium carbonate decahydrate']);
  });

  it.each(['vinegar', 'muriatic acid', 'magnesium chloride anhydrous', 'quicklime', '', 'salt'])(
    'does not know "%s"',
    (text) => {
      expect(findCompound(text)).toBeUndefined();
    },
  );

  it('says how a loose word was read', () => {
    expect(compoundNote('Magnesium chloride', only('magnesium chloride'))).toContain('hexahydrate');
    expect(compoundNote('epsom salt', only('epsom salt'))).toBeUndefined();
    expect(compoundNote('oven baked baking soda', only('baked baking soda'))).toContain('half-baked');
  });

  it('finds every name it offers', () => {
    expect(compoundNames().length).toBeGreaterThan(compounds.length);
    expect(compoundNames().filter((name) => findCompound(name) === undefined)).toEqual([]);
    expect(new Set(compoundNames()).size).toBe(compoundNames().length);
  });

  it('never doses lime for calcium: 50 mg/L of it would bring 7 dKH along', () => {
    expect(compoundsFor('calcium').map(({ formula }) => formula)).toEqual([
      'CaCl2',
      'CaCl2·2H2O',
      'CaCl2·6H2O',
    ]);
  });
});
