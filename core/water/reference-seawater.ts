import { inRange } from '../problem.ts';
import { densityKgM3 } from './seawater.ts';

/** Reference salinity (g salt per kg) of practical salinity 35 [m08]. */
const referenceGKgAt35 = 35.16504;

/** Total alkalinity of reference seawater at S 35, mmol/kg (computed from m08: HCO3 + 2 CO3 + B(OH)4 + OH). */
const referenceAlkMmolKgAt35 = 2.3043;

/**
 * Mass fraction of each constituent in sea salt [m08, reference composition]. `B` is total boron as the element, computed from the
 * fractions of B(OH)4- and B(OH)3 with the weights of iupac21 (4.4872 mg/kg at S 35); `SO4` is the whole ion.
 * Doubt: read in a public code that quotes the table, not in the paper.
 */
const massFraction = {
  Na: 0.3065958,
  Mg: 0.0365055,
  Ca: 0.0117186,
  K: 0.0113495,
  Sr: 0.000226,
  Cl: 0.5503396,
  SO4: 0.0771319,
  Br: 0.0019134,
  F: 3.69e-5,
  B: 1.27602e-4,
} as const;

export type SeawaterSpecies = keyof typeof massFraction;

/**
 * Reference salinity (g/kg) from practical salinity: S_R = 35.16504/35 S [m08].
 * Range S 0 to 42. Check [m08]: 35 -> 35.16504. Doubt: true only for salt in natural proportions.
 */
export function referenceSalinityGKg(practicalSalinity: number): number {
  return (inRange('salinity', practicalSalinity, 0, 42, '') * referenceGKgAt35) / 35;
}

/** Practical salinity from reference salinity (g/kg), 0 to 42.2: the inverse of `referenceSalinityGKg` [m08]. */
export function practicalFromReferenceGKg(referenceGKg: number): number {
  return (inRange('salinity', referenceGKg, 0, (42 * referenceGKgAt35) / 35, 'g/kg') * 35) / referenceGKgAt35;
}

/**
 * mg/L from mg/kg: times the density of EOS-80 over 1000. Ranges as `densityKgM3`.
 * Check [m08 with fm83]: calcium 412.085 mg/kg at S 35, 25 deg C -> 421.70 mg/L.
 */
export function mgLFromMgKg(mgKg: number, practicalSalinity: number, tempC: number): number {
  return (mgKg * densityKgM3(practicalSalinity, tempC)) / 1000;
}

/** mg/kg from mg/L: the inverse of `mgLFromMgKg`. */
export function mgKgFromMgL(mgL: number, practicalSalinity: number, tempC: number): number {
  return (mgL * 1000) / densityKgM3(practicalSalinity, tempC);
}

/**
 * Concentration (mg/kg) of a constituent in seawater of natural composition.
 * Range S 0 to 42. Check [m08]: Mg at S 35 -> 1283.717. Doubt: salt mixes are often richer in Ca, Mg and alkalinity.
 */
export function seawaterMgKg(species: SeawaterSpecies, practicalSalinity: number): number {
  return 1000 * massFraction[species] * referenceSalinityGKg(practicalSalinity);
}

/**
 * Concentration (mg/L) of a constituent in seawater of natural composition: what a test kit would read.
 * Range S 0 to 42, -2 to 40 deg C. Check [m08 with fm83]: S 35, 25 deg C: Ca 421.70, Mg 1313.68, K 408.42, Sr 8.13.
 */
export function seawaterMgL(species: SeawaterSpecies, practicalSalinity: number, tempC: number): number {
  return mgLFromMgKg(seawaterMgKg(species, practicalSalinity), practicalSalinity, tempC);
}

/**
 * Total alkalinity (meq/L) of seawater of natural composition, 2.3043 mmol/kg at S 35, in proportion to salinity.
 * Range S 0 to 42. Check [m08 with fm83]: S 35, 25 deg C -> 2.3581 meq/L (6.612 dKH).
 */
export function seawaterAlkMeqL(practicalSalinity: number, tempC: number): number {
  return mgLFromMgKg((referenceAlkMmolKgAt35 * practicalSalinity) / 35, practicalSalinity, tempC);
}

/**
 * What a concentration (mg/L or meq/L) would read if the same salt were made up to another salinity: c S2 rho2 /
 * (S1 rho1). Tells a low reading caused by low salinity from a true shortage.
 *
 * Salinities 2 to 42, `tempC` -2 to 40 deg C. Check: natural water at S 32, 25 deg C holds calcium 384.70
 * mg/L -> 421.70 at S 35 [m08 with fm83]. Doubt: assumes evaporation or top-off, not a different salt.
 *
 * @throws Problem outside the ranges.
 */
export function readingAtSalinity(concentration: number, fromS: number, toS: number, tempC: number): number {
  const from = inRange('salinity', fromS, 2, 42, '');
  const to = inRange('salinity', toS, 2, 42, '');
  return (concentration * to * densityKgM3(to, tempC)) / (from * densityKgM3(from, tempC));
}
