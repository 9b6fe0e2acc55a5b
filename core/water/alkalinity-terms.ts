import { carbonateConstants, type CarbonateConstants, type Water } from './carbonate-constants.ts';
import { henryK0 } from './co2-gas.ts';
import { seawaterTotals, type SeawaterTotals } from './seawater-totals.ts';

/** Constants and totals of one water, worked out once for a solution. */
export interface Chemistry {
  readonly constants: CarbonateConstants;
  readonly totals: SeawaterTotals;
  readonly k0: number;
}

/** @throws Problem when the water is outside `carbonateRange`. */
export function chemistryOf(water: Water): Chemistry {
  return {
    constants: carbonateConstants(water),
    totals: seawaterTotals(water.practicalSalinity),
    k0: henryK0(water),
  };
}

/** Borate ion, mol/kg, at hydrogen ion `h` (mol/kg, total scale). */
export function borateIon({ constants, totals }: Chemistry, h: number): number {
  return (totals.borate * constants.kb) / (constants.kb + h);
}

/**
 * Alkalinity that is not carbonate, mol/kg: B(OH)4- + OH- - free H+ - HSO4- - HF [dsc07 ch. 2]. Phosphate and
 * silicate are left out: phosphate of 0.1 mg/L counts for about 1 umol/kg. `h` mol/kg on the total scale.
 */
export function otherAlkalinity(chemistry: Chemistry, h: number): number {
  const { constants, totals } = chemistry;
  const free = h / (1 + totals.sulfate / constants.ks);
  const bisulfate = totals.sulfate / (1 + constants.ks / free);
  const hydrofluoric = totals.fluoride / (1 + constants.kf / h);
  return borateIon(chemistry, h) + constants.kw / h - free - bisulfate - hydrofluoric;
}

/** DIC over CO2 and carbonate alkalinity over CO2 at `h`, no unit: 1 + K1/h + K1 K2/h2 and K1/h + 2 K1 K2/h2. */
export function perCo2({ constants }: Chemistry, h: number): { readonly dic: number; readonly alk: number } {
  const hco3 = constants.k1 / h;
  const co3 = (hco3 * constants.k2) / h;
  return { dic: 1 + hco3 + co3, alk: hco3 + 2 * co3 };
}
