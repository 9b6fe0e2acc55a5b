import { molarMass, type Atoms } from '../quantity/molar-mass.ts';
import type { ParameterId } from '../water/parameter.ts';

/**
 * Ions a dose leaves in the water, by what a test kit or a salinity probe sees of them. Phosphate is counted as PO4
 * and iodide as I, whatever form they take in seawater. Carbon and hydroxide are counted as alkalinity instead.
 */
const ionAtoms = {
  Na: { Na: 1 },
  K: { K: 1 },
  Ca: { Ca: 1 },
  Mg: { Mg: 1 },
  Sr: { Sr: 1 },
  Cl: { Cl: 1 },
  SO4: { S: 1, O: 4 },
  Br: { Br: 1 },
  I: { I: 1 },
  NO3: { N: 1, O: 3 },
  PO4: { P: 1, O: 4 },
} as const satisfies Record<string, Atoms>;

export type Ion = keyof typeof ionAtoms;

export const ionNames: Readonly<Record<Ion, string>> = {
  Na: 'sodium',
  K: 'potassium',
  Ca: 'calcium',
  Mg: 'magnesium',
  Sr: 'strontium',
  Cl: 'chloride',
  SO4: 'sulfate',
  Br: 'bromide',
  I: 'iodide',
  NO3: 'nitrate',
  PO4: 'phosphate',
};

/** The ion each tested parameter counts; alkalinity is not an ion and is carried apart. */
export const ionOf: Readonly<Partial<Record<ParameterId, Ion>>> = {
  calcium: 'Ca',
  magnesium: 'Mg',
  potassium: 'K',
  strontium: 'Sr',
  bromide: 'Br',
  iodine: 'I',
  nitrate: 'NO3',
  phosphate: 'PO4',
};

/** Molar mass of an ion, g/mol (iupac21). NO3 -> 62.004. */
export function ionMolarMass(ion: Ion): number {
  return molarMass(ionAtoms[ion]);
}
