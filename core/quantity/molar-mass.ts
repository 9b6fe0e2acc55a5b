/**
 * Standard atomic weights, g/mol: IUPAC 2021, abridged value where IUPAC gives an interval (source iupac21).
 * Older handbooks carry Cl 35.453 and S 32.065, so weights computed from them differ by up to 1e-4.
 */
export const atomicWeights = {
  H: 1.008,
  B: 10.81,
  C: 12.011,
  N: 14.007,
  O: 15.999,
  F: 18.998403162,
  Na: 22.98976928,
  Mg: 24.305,
  P: 30.973761998,
  S: 32.06,
  Cl: 35.45,
  K: 39.0983,
  Ca: 40.078,
  Br: 79.904,
  Sr: 87.62,
  I: 126.90447,
} as const;

export type ElementSymbol = keyof typeof atomicWeights;

/** Atoms of each element in one formula unit: NaHCO3 is `{ Na: 1, H: 1, C: 1, O: 3 }`. */
export type Atoms = Partial<Record<ElementSymbol, number>>;

/** Molar mass in g/mol of a formula given by its atoms. NaHCO3 -> 84.0058. */
export function molarMass(atoms: Atoms): number {
  let grams = 0;
  for (const [element, count] of Object.entries(atoms))
    grams += atomicWeights[element as ElementSymbol] * count;
  return grams;
}
