import { molarMass } from '../quantity/molar-mass.ts';
import { DKH_PER_MEQ_L } from '../quantity/unit.ts';

/** mg of calcium laid down with 1 meq of alkalinity: CaCO3 takes 1 mol Ca and 2 eq (iupac21). = 20.039. */
export const CALCIUM_MG_PER_MEQ = molarMass({ Ca: 1 }) / 2;

/** meq/L from dKH. Source dkh. Check: 1 dKH -> 0.35665246 meq/L. */
export function meqLFromDkh(alkDkh: number): number {
  return alkDkh / DKH_PER_MEQ_L;
}

/** dKH from meq/L. Source dkh. Check: 1 meq/L -> 2.80385 dKH. */
export function dkhFromMeqL(alkMeqL: number): number {
  return alkMeqL * DKH_PER_MEQ_L;
}

/**
 * Calcium (mg/L) that goes with an alkalinity (meq/L) where both become or come from calcium carbonate: coral growth,
 * limewater. Check: 1 dKH -> 7.147 mg/L Ca. Doubt: growth with some magnesium or strontium takes slightly less.
 */
export function calciumWithAlkalinity(alkMeqL: number): number {
  return alkMeqL * CALCIUM_MG_PER_MEQ;
}
