import { inRange } from '../problem.ts';
import { carbonateConstants, ionicStrength, type Water } from './carbonate-constants.ts';
import { seawaterTotals } from './seawater-totals.ts';

/**
 * free: H+ alone; total: H+ and HSO4-; seawater: those and HF; nbs: activity, what a probe set in fresh-water (NBS,
 * NIST) buffers shows. A hobby probe reads nbs; every constant of the carbonate system is on total.
 */
export type PhScale = 'free' | 'total' | 'seawater' | 'nbs';

/** A pH and the scale it is on, kept together so that one scale cannot be taken for another. */
export interface Ph<S extends PhScale = PhScale> {
  readonly scale: S;
  readonly value: number;
}

/** The pH this project works with, on any scale. */
export const phRange = { min: 5, max: 11 } as const;

/** A pH on a scale. `value` 5 to 11. @throws Problem outside. */
export function ph<S extends PhScale>(scale: S, value: number): Ph<S> {
  return { scale, value: inRange('pH', value, phRange.min, phRange.max, '') };
}

/**
 * The same acidity on another pH scale.
 *
 * Water within `carbonateRange`. Source: dsc07 ch. 2 and 5 (definitions, KS), dr79 (KF on the free scale), tak82 (NBS).
 * Check [pyco2sys, computed] at S 35, 25 deg C: free = total + 0.1077, seawater = total - 0.0097, nbs = total + 0.1370.
 * Doubt: with the guide's KF (pf87) seawater would be total - 0.0129. NBS: the liquid junction of a hobby probe moves
 * in seawater by some 0.05 (common practice, no source), so a reading is never better than +-0.05.
 *
 * @throws Problem outside the range.
 */
export function convertPh<S extends PhScale>(from: Ph, to: S, water: Water): Ph<S> {
  const above = aboveFree(water);
  return { scale: to, value: from.value - above[from.scale] + above[to] };
}

/** pH on each scale minus pH on the free scale. */
function aboveFree(water: Water): Readonly<Record<PhScale, number>> {
  const { sulfate, fluoride } = seawaterTotals(water.practicalSalinity);
  const withSulfate = 1 + sulfate / carbonateConstants(water).ks;
  const seawater = -Math.log10(withSulfate + fluoride / fluorideKFree(water));
  return {
    free: 0,
    total: -Math.log10(withSulfate),
    seawater,
    nbs: seawater - Math.log10(activityFactor(water)),
  };
}

/** Dissociation constant of HF on the free scale, mol/kg [dr79]; 0.002365 at S 35, 25 deg C. */
function fluorideKFree({ practicalSalinity, tempC }: Water): number {
  const lnPerKgWater =
    1590.2 / (tempC + 273.15) - 12.641 + 1.525 * Math.sqrt(ionicStrength(practicalSalinity));
  return Math.exp(lnPerKgWater) * (1 - 0.001005 * practicalSalinity);
}

/** fH, activity of H+ on the NBS scale over concentration on the seawater scale [tak82]; 0.7134 at S 35, 25 deg C. */
function activityFactor({ practicalSalinity: s, tempC }: Water): number {
  const t = tempC + 273.15;
  return 1.2948 - 0.002036 * t + (0.0004607 - 0.000001475 * t) * s * s;
}
