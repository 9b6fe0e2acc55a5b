import type { ParameterId } from '../water/parameter.ts';
import type { Compound } from './compound.ts';
import { supplyPerG } from './dose.ts';

/** What both salts are dosed for; the first of the one that is replaced. */
export function sharedBy(from: Compound, to: Compound): readonly ParameterId[] {
  return from.raises.filter((id) => to.raises.includes(id));
}

/**
 * Grams of one pure salt that supply as much as one gram of another. Computed from the formulas [iupac21].
 * Check: NaHCO3 by Na2CO3 -> (105.988/2)/84.006 = 0.6308; CaCl2.2H2O by CaCl2 -> 110.98/147.01 = 0.7549.
 * Doubt: purity and moisture of both, and what else they bring along.
 */
export function gramsForGram(from: Compound, to: Compound, id: ParameterId): number {
  return supplyPerG(from, id) / supplyPerG(to, id);
}
