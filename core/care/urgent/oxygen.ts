import { inRange } from '../../problem.ts';
import { molarMass } from '../../quantity/molar-mass.ts';
import { densityKgM3 } from '../../water/seawater.ts';

/** Coefficients of the combined fit of Garcia & Gordon 1992 [gg92], umol/kg; from memory, checked against its table. */
const A = [5.80871, 3.20291, 4.17887, 5.10006, -9.86643e-2, 3.80369] as const;
const B = [-7.01577e-3, -7.70028e-3, -1.13864e-2, -9.51519e-3] as const;
const C0 = -2.75915e-7;
const O2_G_PER_MOL = molarMass({ O: 2 });

/**
 * Oxygen in sea water in balance with moist air at 1 atm, mg/L [gg92, eq. 8 with the Benson and Krause coefficients,
 * from memory, checked against the table it gives]. `tempC` 0 to 40, `salinity` 0 to 42.
 * Check: S 35, 25 deg C -> 206.79 umol/kg, 6.771 mg/L. Doubt: a tank is seldom in full balance, and less so when crowded.
 *
 * @throws Problem outside the range.
 */
export function oxygenMgPerL(salinity: number, tempC: number): number {
  const umolKg = oxygenUmolPerKg(salinity, tempC);
  return (umolKg * O2_G_PER_MOL * densityKgM3(salinity, tempC)) / 1e6;
}

/** The same in umol/kg. Check: S 35, 10 deg C -> 274.61. */
export function oxygenUmolPerKg(salinity: number, tempC: number): number {
  const s = inRange('salinity', salinity, 0, 42, 'ppt');
  const t = inRange('temperature', tempC, 0, 40, '°C');
  const scaled = Math.log((298.15 - t) / (273.15 + t));
  return Math.exp(polynomial(A, scaled) + s * polynomial(B, scaled) + C0 * s * s);
}

function polynomial(coefficients: readonly number[], x: number): number {
  return coefficients.reduceRight((sum, coefficient) => sum * x + coefficient, 0);
}
