import { inRange } from '../problem.ts';
import { atomicWeights } from '../quantity/molar-mass.ts';
import { carbonateConstants, type Water } from './carbonate-constants.ts';
import { densityKgM3 } from './seawater.ts';
import { seawaterTotals } from './seawater-totals.ts';

/** Saturation state, no unit: above 1 the mineral can form, below 1 it dissolves. */
export interface Saturation {
  readonly omegaAragonite: number;
  readonly omegaCalcite: number;
}

/**
 * Calcium in umol/kg from mg/L. `calciumMgL` 0 to 2000. Check: 421.70 mg/L at S 35, 25 deg C -> 10282 [m08].
 * @throws Problem outside the ranges.
 */
export function calciumUmolKg(calciumMgL: number, water: Water): number {
  const mmolL = inRange('calcium', calciumMgL, 0, 2000, 'mg/L') / atomicWeights.Ca;
  return (mmolL * 1e6) / densityKgM3(water.practicalSalinity, water.tempC);
}

/**
 * Saturation state of aragonite and calcite: omega = [Ca][CO3] / Ksp.
 *
 * `co3UmolKg` carbonate ion; `calciumMgL` as measured, or left out for the calcium of the salinity; water within
 * `carbonateRange`. Source: mucci83 through zw01. Check [pyco2sys, computed]: CO3 234.593 umol/kg at S 35, 25 deg C ->
 * aragonite 3.7223, calcite 5.6472. Doubt: Ksp was measured at natural magnesium; magnesium far from natural moves it (from memory).
 *
 * @throws Problem outside the ranges.
 */
export function saturation(co3UmolKg: number, water: Water, calciumMgL?: number): Saturation {
  const co3 = inRange('carbonate', co3UmolKg, 0, 20_000, 'µmol/kg') * 1e-6;
  const { kspAragonite, kspCalcite } = carbonateConstants(water);
  const calcium =
    calciumMgL === undefined
      ? seawaterTotals(water.practicalSalinity).calcium
      : calciumUmolKg(calciumMgL, water) * 1e-6;
  return { omegaAragonite: (calcium * co3) / kspAragonite, omegaCalcite: (calcium * co3) / kspCalcite };
}
