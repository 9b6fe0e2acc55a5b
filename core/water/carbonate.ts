import { inRange, Problem } from '../problem.ts';
import { say } from '../wording/say.ts';
import { borateIon, type Chemistry, chemistryOf, otherAlkalinity, perCo2 } from './alkalinity-terms.ts';
import type { Water } from './carbonate-constants.ts';
import { fugacityFactor } from './co2-gas.ts';
import { convertPh, ph, type Ph, phRange } from './ph-scale.ts';
import { risingRoot } from './root.ts';
import { saturation } from './saturation.ts';
import { densityKgM3 } from './seawater.ts';

/**
 * The carbonate system of one water in balance with itself. umol/kg and uatm; `phTotal` on the total scale; omega with
 * the calcium of the salinity (`saturation` takes a measured one).
 */
export interface CarbonateState {
  readonly water: Water;
  readonly alkUmolKg: number;
  readonly dicUmolKg: number;
  readonly phTotal: number;
  readonly pco2Uatm: number;
  readonly co2UmolKg: number;
  readonly hco3UmolKg: number;
  readonly co3UmolKg: number;
  readonly boh4UmolKg: number;
  readonly ohUmolKg: number;
  readonly omegaAragonite: number;
  readonly omegaCalcite: number;
}

/** Alkalinity in umol/kg from meq/L by density. Check: 2.5 meq/L at S 35, 25 deg C -> 2442.98 [fm83]. */
export function alkUmolKgFromMeqL(alkMeqL: number, water: Water): number {
  return (alkMeqL * 1e6) / densityKgM3(water.practicalSalinity, water.tempC);
}

/** Alkalinity in meq/L from umol/kg: the inverse of `alkUmolKgFromMeqL`. */
export function alkMeqLFromUmolKg(alkUmolKg: number, water: Water): number {
  return (alkUmolKg * densityKgM3(water.practicalSalinity, water.tempC)) / 1e6;
}

/**
 * The carbonate system from alkalinity and pH (any scale).
 *
 * `alkUmolKg` 50 to 20000; pH 5 to 11; water within `carbonateRange`. Method: dsc07 ch. 2 and 5, one atmosphere, no
 * nutrients. Check [pyco2sys, computed]: S 35, 25 deg C, 2300, total 8.1 -> DIC 1967.15, pCO2 340.1, aragonite 3.722.
 * Doubt: 0.05 in a probe's pH is 12 % of pCO2; the constants themselves add about 2 % (from memory).
 *
 * @throws Problem outside the ranges, or when so high a pH needs more alkalinity than there is.
 */
export function fromAlkalinityAndPh(alkUmolKg: number, reading: Ph, water: Water): CarbonateState {
  const chemistry = chemistryOf(water);
  const h = hydrogenIon(reading, water);
  const carbonateAlk = checkedAlk(alkUmolKg) - otherAlkalinity(chemistry, h);
  if (carbonateAlk <= 0) throw doNotFit('alkalinity', `${alkUmolKg} µmol/kg`, say('water.phNoFit'));
  return stateAt(chemistry, water, h, carbonateAlk / perCo2(chemistry, h).alk);
}

/**
 * The carbonate system from DIC and pH (any scale). `dicUmolKg` 10 to 20000; otherwise as `fromAlkalinityAndPh`.
 *
 * @throws Problem outside the ranges.
 */
export function fromDicAndPh(dicUmolKg: number, reading: Ph, water: Water): CarbonateState {
  const chemistry = chemistryOf(water);
  const h = hydrogenIon(reading, water);
  return stateAt(chemistry, water, h, checkedDic(dicUmolKg) / perCo2(chemistry, h).dic);
}

/**
 * The carbonate system from alkalinity and pCO2: water in balance with a gas. `pco2Uatm` 1 to 200000.
 *
 * Check [pyco2sys, computed]: S 35, 25 deg C, 2300, 420 uatm -> pH total 8.0259. Otherwise as `fromAlkalinityAndPh`.
 *
 * @throws Problem outside the ranges, or when no pH from 5 to 11 fits both.
 */
export function fromAlkalinityAndPco2(alkUmolKg: number, pco2Uatm: number, water: Water): CarbonateState {
  const chemistry = chemistryOf(water);
  const pco2 = inRange('pCO2', pco2Uatm, 1, 200_000, 'µatm');
  const co2 = pco2 * 1e-6 * fugacityFactor(water.tempC) * chemistry.k0;
  const h = hydrogenIonFor(chemistry, checkedAlk(alkUmolKg), (at) => co2 * perCo2(chemistry, at).alk);
  if (h === undefined)
    throw doNotFit(
      'pCO2',
      `${pco2Uatm} µatm`,
      say('water.alkalinityNoFit', { field: 'pCO2', alkalinity: `${alkUmolKg} µmol/kg` }),
    );
  return stateAt(chemistry, water, h, co2);
}

/**
 * The carbonate system from alkalinity and DIC. `dicUmolKg` 10 to 20000; otherwise as `fromAlkalinityAndPh`.
 *
 * Check [pyco2sys, computed]: S 35, 25 deg C, 3000, DIC 2146.62 -> pH total 8.5838.
 *
 * @throws Problem outside the ranges, or when no pH from 5 to 11 fits both.
 */
export function fromAlkalinityAndDic(alkUmolKg: number, dicUmolKg: number, water: Water): CarbonateState {
  const chemistry = chemistryOf(water);
  const dic = checkedDic(dicUmolKg);
  const co2 = (at: number) => dic / perCo2(chemistry, at).dic;
  const h = hydrogenIonFor(chemistry, checkedAlk(alkUmolKg), (at) => co2(at) * perCo2(chemistry, at).alk);
  if (h === undefined)
    throw doNotFit(
      'DIC',
      `${dicUmolKg} µmol/kg`,
      say('water.alkalinityNoFit', { field: 'DIC', alkalinity: `${alkUmolKg} µmol/kg` }),
    );
  return stateAt(chemistry, water, h, co2(h));
}

/**
 * The water after an addition is mixed in and before any gas is exchanged: alkalinity and DIC (umol/kg) simply add.
 *
 * Per mole: NaHCO3 +1 alk +1 DIC; Na2CO3 +2 +1; hydroxide +1 0; CaCO3 precipitating -2 -1; CO2 gas 0 +1.
 * Check [pyco2sys, computed]: S 35, 25 deg C, 2500, pH 8.1, +500 +500 -> pH 8.0308; +500 +250 -> 8.3320; +500 0 -> 8.5838.
 *
 * @throws Problem when the result is outside the ranges of `fromAlkalinityAndDic`.
 */
export function afterAddition(before: CarbonateState, addedAlk: number, addedDic: number): CarbonateState {
  return fromAlkalinityAndDic(before.alkUmolKg + addedAlk, before.dicUmolKg + addedDic, before.water);
}

/** mol/kg, checked. */
function checkedAlk(alkUmolKg: number): number {
  return inRange('alkalinity', alkUmolKg, 50, 20_000, 'µmol/kg') * 1e-6;
}

/** mol/kg, checked. */
function checkedDic(dicUmolKg: number): number {
  return inRange('DIC', dicUmolKg, 10, 20_000, 'µmol/kg') * 1e-6;
}

/** Hydrogen ion, mol/kg on the total scale, from a reading on any scale. */
function hydrogenIon(reading: Ph, water: Water): number {
  return 10 ** -convertPh(ph(reading.scale, reading.value), 'total', water).value;
}

/** Hydrogen ion at which the carbonate alkalinity (rising with pH) and the other alkalinity add up to `alk`, mol/kg. */
function hydrogenIonFor(
  chemistry: Chemistry,
  alk: number,
  carbonateAlk: (h: number) => number,
): number | undefined {
  const excess = (phTotal: number) => {
    const h = 10 ** -phTotal;
    return carbonateAlk(h) + otherAlkalinity(chemistry, h) - alk;
  };
  const phTotal = risingRoot(excess, phRange.min, phRange.max);
  return phTotal === undefined ? undefined : 10 ** -phTotal;
}

function doNotFit(field: string, given: string, message: string): Problem {
  const limit = say('water.meetAtPh', { low: String(phRange.min), high: String(phRange.max) });
  return new Problem(message, {
    field,
    given,
    limit,
    hint: say('water.hintBothReadings'),
  });
}

/** Every quantity from hydrogen ion and CO2 (mol/kg). */
function stateAt(chemistry: Chemistry, water: Water, h: number, co2: number): CarbonateState {
  const { constants, k0 } = chemistry;
  const share = perCo2(chemistry, h);
  const hco3 = (co2 * constants.k1) / h;
  const co3 = (hco3 * constants.k2) / h;
  return {
    water,
    alkUmolKg: (co2 * share.alk + otherAlkalinity(chemistry, h)) * 1e6,
    dicUmolKg: co2 * share.dic * 1e6,
    phTotal: -Math.log10(h),
    pco2Uatm: (co2 * 1e6) / (k0 * fugacityFactor(water.tempC)),
    co2UmolKg: co2 * 1e6,
    hco3UmolKg: hco3 * 1e6,
    co3UmolKg: co3 * 1e6,
    boh4UmolKg: borateIon(chemistry, h) * 1e6,
    ohUmolKg: (constants.kw / h) * 1e6,
    ...saturation(co3 * 1e6, water),
  };
}
