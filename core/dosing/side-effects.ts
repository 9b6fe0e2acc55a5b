import { alkUmolKgFromMeqL, afterAddition, fromAlkalinityAndPh } from '../water/carbonate.ts';
import type { Water } from '../water/carbonate-constants.ts';
import { densityKgM3 } from '../water/seawater.ts';
import { molarMass } from '../quantity/molar-mass.ts';
import type { Ph } from '../water/ph-scale.ts';
import { type Compound, compoundMolarMass } from './compound.ts';
import { type Ion, ionMolarMass } from './ion.ts';

/** A rise of one ion, mg/L. */
export interface IonRise {
  readonly ion: Ion;
  readonly riseMgL: number;
}

/**
 * Every ion `massG` grams of a compound (pure share `purityShare`) leave in `volumeL`, mg/L, the most first.
 *
 * Check [computed from iupac21]: 36.68 g CaCl2·2H2O in 1000 L -> 10 mg/L Ca and 17.69 mg/L Cl.
 */
export function ionRises(
  compound: Compound,
  massG: number,
  volumeL: number,
  purityShare = 1,
): readonly IonRise[] {
  const mmolPerL = (massG * purityShare * 1000) / compoundMolarMass(compound) / volumeL;
  const rises = Object.entries(compound.ions).map(([name, count]) => {
    const ion = name as Ion;
    return { ion, riseMgL: mmolPerL * count * ionMolarMass(ion) };
  });
  return rises.sort((a, b) => b.riseMgL - a.riseMgL);
}

/**
 * About how much saltier the water gets, ppt (g per kg): the powder without its crystal water, over the mass of water
 * at S 35, 25 deg C. Doubt: a probe or refractometer weighs each ion differently, so this is a size, not a reading.
 */
export function salinityRisePpt(compound: Compound, massG: number, volumeL: number, purityShare = 1): number {
  const dryShare = 1 - (compound.water * molarMass({ H: 2, O: 1 })) / compoundMolarMass(compound);
  return (
    (massG * purityShare * dryShare) / ((volumeL * densityKgM3(REEF.practicalSalinity, REEF.tempC)) / 1000)
  );
}

/** The water a pH move is worked out for where nothing else is known. */
export const REEF: Water = { practicalSalinity: 35, tempC: 25 };
/** The pH it starts from where none is given, total scale. */
export const USUAL_PH: Ph = { scale: 'total', value: 8.1 };

/** pH (total scale) before and right after an addition. */
export interface PhMove {
  readonly before: number;
  readonly after: number;
}

/**
 * Where pH goes when a compound that carries alkalinity is mixed in, before any gas is exchanged with the air.
 *
 * `alkMeqL` the alkalinity before, `riseMeqL` the rise, both meq/L. Source dsc07, lueker00 through carbonate.ts.
 * Check [pyco2sys, computed] at S 35, 25 deg C, 2500 umol/kg, pH 8.1, +500 umol/kg: NaHCO3 -> 8.0308,
 * Na2CO3 -> 8.3320, Ca(OH)2 -> 8.5838. Doubt: local pH where the dose enters is far higher than the mixed value, and
 * aeration takes most of the move back within hours.
 *
 * @throws Problem outside the ranges of the carbonate system.
 */
export function phMove(
  compound: Compound,
  alkMeqL: number,
  riseMeqL: number,
  start = USUAL_PH,
  water = REEF,
): PhMove {
  const before = fromAlkalinityAndPh(alkUmolKgFromMeqL(alkMeqL, water), start, water);
  const addedAlk = alkUmolKgFromMeqL(riseMeqL, water);
  const addedDic = (addedAlk * compound.dicPerMol) / compound.alkEqPerMol;
  return { before: before.phTotal, after: afterAddition(before, addedAlk, addedDic).phTotal };
}
