import { inRange, Problem } from '../problem.ts';
import { say } from '../wording/say.ts';
import type { Likely } from './displaced.ts';

/** A known amount put into the water and what a kit showed; all in one unit (meq, or mg). */
export interface Dilution {
  /** Everything that was added. */
  readonly supplied: number;
  /** Per litre. */
  readonly before: number;
  readonly after: number;
  /** What the kit can tell apart, per litre. */
  readonly resolution: number;
}

/**
 * Litres of water from the rise a known amount made: supplied / (after - before). Each reading may be off by half of
 * `resolution`, the rise by all of it, so the range is supplied / (rise ± resolution).
 *
 * Check (`mixing`): 20 g NaHCO3 is 238.08 meq; 7.0 -> 8.1 dKH is 0.39232 meq/L -> 606.9 L; with a 0.3 dKH kit 476.8 to
 * 834.4 L. Doubt: the tank's own use between the readings (retest within hours), losses as solid, damp powder.
 *
 * @throws Problem when the rise is no larger than what the kit can tell apart.
 */
export function dilutionL({ supplied, before, after, resolution }: Dilution): Likely {
  inRange('amount supplied', supplied, 1e-6, 1e9, '');
  const rise = after - before;
  if (rise <= resolution * (1 + 1e-9)) {
    throw new Problem(say('tank.riseTooSmall'), {
      field: 'dilution',
      hint: say('tank.hintFinerKit'),
    });
  }
  return {
    low: supplied / (rise + resolution),
    likely: supplied / rise,
    high: supplied / (rise - resolution),
  };
}
