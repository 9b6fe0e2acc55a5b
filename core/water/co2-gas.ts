import { inRange } from '../problem.ts';
import { inCarbonateRange, type Water } from './carbonate-constants.ts';

/**
 * Henry constant K0 of CO2 in seawater, mol kg-1 atm-1 (of fugacity).
 * Source: Weiss 1974 through dsc07 ch. 5. Check [dsc07] at S 35, 25 deg C: ln K0 = -3.5617.
 */
export function henryK0(water: Water): number {
  const { practicalSalinity: s, tempC } = inCarbonateRange(water);
  const t = (tempC + 273.15) / 100;
  const salting = s * (0.023517 - 0.023656 * t + 0.0047036 * t * t);
  return Math.exp(93.4517 / t - 60.2409 + 23.3585 * Math.log(t) + salting);
}

/**
 * Fugacity of CO2 over its partial pressure in air at 1 atm, no unit (virial equation, little CO2 in the gas).
 * Source: Weiss 1974 through dsc07 ch. 5. Check [pyco2sys, computed] at 25 deg C: 0.99681.
 */
export function fugacityFactor(tempC: number): number {
  const t = tempC + 273.15;
  const virial = -1636.75 + t * (12.0408 + t * (-0.0327957 + t * 3.16528e-5));
  const cross = 57.7 - 0.118 * t;
  return Math.exp(((virial + 2 * cross) * 1.01325) / (83.14462618 * t));
}

/**
 * Partial pressure (uatm) over the water from CO2 in dry room air (ppm by volume), air wet to saturation, 1 atm.
 *
 * `ppm` 1 to 200000. Source: Weiss & Price 1980 through dsc07 ch. 5. Check [pyco2sys, computed]: 420 ppm at S 35,
 * 25 deg C -> 407.1 uatm. Doubt: air pressure falls about 11 % by 1000 m of height (from memory), and pCO2 with it.
 *
 * @throws Problem outside the ranges.
 */
export function pco2FromDryAirPpm(ppm: number, water: Water): number {
  const { practicalSalinity: s, tempC } = inCarbonateRange(water);
  const t = (tempC + 273.15) / 100;
  const waterVapourAtm = Math.exp(24.4543 - 67.4509 / t - 4.8489 * Math.log(t) - 0.000544 * s);
  return inRange('CO2 in air', ppm, 1, 200_000, 'ppm') * (1 - waterVapourAtm);
}
