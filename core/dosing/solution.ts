import { inRange } from '../problem.ts';
import type { ParameterId } from '../water/parameter.ts';
import { type Compound } from './compound.ts';
import { supplyPerG } from './dose.ts';

/** Grams of powder per litre of finished solution. `finalVolumeL` is the volume after filling up. */
export function strengthGL(massG: number, finalVolumeL: number): number {
  return inRange('amount', massG, 1e-6, 1e6, 'g') / inRange('volume', finalVolumeL, 1e-4, 1e6, 'L');
}

/**
 * What 1 mL of a solution supplies: meq for alkalinity, mg for the rest. `solutionGL` grams of powder per litre.
 *
 * Check: 84.0058 g/L of pure NaHCO3 is 1 mol/L -> 1 meq/mL.
 */
export function suppliedPerMl(
  compound: Compound,
  id: ParameterId,
  solutionGL: number,
  purityShare = 1,
): number {
  return (supplyPerG(compound, id) * solutionGL * purityShare) / 1000;
}

/** mL of a solution that hold `massG` grams of powder. */
export function solutionMl(massG: number, solutionGL: number): number {
  return (massG / inRange('strength', solutionGL, 1e-6, 1e4, 'g/L')) * 1000;
}

/** Masses below this cannot be weighed at home to a few per cent: a stock solution is measured out instead. */
export const WEIGHABLE_G = 0.1;

/** A stock that turns a mass too small to weigh into millilitres: `gramsPerLitre` g made up to 1 L, and the mL of it. */
export interface Stock {
  readonly gramsPerLitre: number;
  readonly doseMl: number;
}

/**
 * The stock for a dose of `massG` below `WEIGHABLE_G`: 1 g in 1 L, or that diluted 1 in 10 where less than 1 mL of it
 * would be needed. Check: 8.6 mg -> 8.6 mL of 1 g/L.
 */
export function stockFor(massG: number): Stock {
  const gramsPerLitre = massG >= 0.001 ? 1 : 0.1;
  return { gramsPerLitre, doseMl: solutionMl(massG, gramsPerLitre) };
}
