import { inRange } from '../problem.ts';
import { referenceSalinityGKg } from '../water/reference-seawater.ts';
import { densityKgM3 } from '../water/seawater.ts';

/** Salinity a batch may be mixed to, and a tank adjusted within. */
export const mixRange = { min: 2, max: 42 } as const;

function salinity(field: string, practicalSalinity: number): number {
  return inRange(field, practicalSalinity, mixRange.min, mixRange.max, 'ppt');
}

/**
 * Grams of dry sea salt in a litre of finished water. `asPpt` takes S as g/kg, as keepers do; `reference` is the mass
 * of salt of natural composition, 35.16504/35 S g/kg [m08]. Both times the density [fm83].
 *
 * S 2 to 42, `tempC` -2 to 40 deg C. Check: S 35, 25 deg C -> 35.82 and 35.99 g/L (35 and 35.165 g/kg times
 * 1.02334 kg/L). Doubt: a bag holds moisture and is not of natural composition; see `baggedMixGPerL`.
 */
export function drySaltGPerL(practicalSalinity: number, tempC = 25): { asPpt: number; reference: number } {
  const s = salinity('goal', practicalSalinity);
  const kgPerL = densityKgM3(s, tempC) / 1000;
  return { asPpt: s * kgPerL, reference: referenceSalinityGKg(s) * kgPerL };
}

/** Grams of bagged mix a litre at S 35 usually takes, moisture included. Common practice, no source. */
const baggedAt35 = { low: 36, high: 39 } as const;

/** Grams of bagged mix a litre usually takes at S 2 to 42, in proportion from 36 to 39 g at 35. Common practice. */
export function baggedMixGPerL(practicalSalinity: number): { low: number; high: number } {
  const part = salinity('goal', practicalSalinity) / 35;
  return { low: baggedAt35.low * part, high: baggedAt35.high * part };
}

/** Salinity a batch of bagged mix may come out at, lowest and highest: the inverse of `baggedMixGPerL`. */
export function salinityOfBaggedMix(gPerL: number): { low: number; high: number } {
  const g = inRange('amount', gPerL, 2, 48, 'g per litre');
  return { low: (35 * g) / baggedAt35.high, high: (35 * g) / baggedAt35.low };
}

/**
 * Dry salt (g) that takes water of `waterKg` from one salinity to a higher one: m (SA2 - SA1)/(1000 - SA2), SA in
 * g/kg [m08]. Source: mass balance [mixing]. Check: 100 kg from S 33 to 35 -> 208.2668 g.
 *
 * @throws Problem outside S 0 (start) or 2 to 42, or when the goal is not above the start.
 */
export function drySaltToAddG(waterKg: number, fromS: number, toS: number): number {
  const to = referenceSalinityGKg(inRange('goal', toS, Math.max(fromS, mixRange.min), mixRange.max, 'ppt'));
  const from = referenceSalinityGKg(inRange('now', fromS, 0, mixRange.max, 'ppt'));
  return (1000 * waterKg * (to - from)) / (1000 - to);
}

/**
 * Fresh water (kg) that takes salt water of `waterKg` down when it is added and nothing removed: m (S1/S2 - 1).
 * Source: mass balance [mixing]. Check: 100 kg from S 36 to 35 -> 2.85714 kg.
 */
export function freshWaterToAddKg(waterKg: number, fromS: number, toS: number): number {
  const from = salinity('now', fromS);
  return waterKg * (from / inRange('goal', toS, mixRange.min, from, 'ppt') - 1);
}

/**
 * Part of the present water that is fresh water in excess, where a tank of S `usualS` now shows `nowS` because fresh
 * water ran in: 1 - S/S0. Check (25/25 scale): 1.025 (33.188) showing 1.024 (31.867) -> 0.0398.
 */
export function freshExcessFraction(usualS: number, nowS: number): number {
  const usual = salinity('goal', usualS);
  return 1 - inRange('now', nowS, mixRange.min, usual, 'ppt') / usual;
}

/**
 * Salinity after evaporated water was replaced by salt water instead of fresh: S + Ss e, `toppedFraction` e being the
 * volume topped off over the volume of the system, level kept (0 to 0.5). Source: mass balance [mixing].
 * Check: 4 days of 1 % with 35 ppt at 35 -> 36.4.
 */
export function afterSaltTopOff(nowS: number, topOffS: number, toppedFraction: number): number {
  const share = inRange('amount', toppedFraction, 0, 0.5, 'of the volume');
  return salinity('now', nowS) + salinity('fresh', topOffS) * share;
}

/** Part of the system volume to top off with salt water of `topOffS` to rise from one salinity to another. */
export function saltTopOffFraction(fromS: number, toS: number, topOffS: number): number {
  const to = inRange('goal', toS, salinity('now', fromS), mixRange.max, 'ppt');
  return (to - fromS) / salinity('fresh', topOffS);
}
