import type { PrimerId } from '../care/primers/primer.ts';
import { changesAdded, lightWordBars } from './primer-bars.ts';
import { cycleCourse, lightStairs, limeSolubility, phAgainstCo2 } from './primer-curves.ts';
import { dripLoop, roomBetween } from './primer-drawings.ts';
import type { PrimerPicture } from './primer-frame.ts';
import { alkalinityUnits, calciumBesideAlkalinity, salinityScales } from './primer-scales.ts';

/** Cards on which a picture says more than words. */
const drawings: Partial<Record<PrimerId, () => PrimerPicture>> = {
  cycle: cycleCourse,
  acclimation: lightStairs,
  'room to grow': roomBetween,
  PAR: lightWordBars,
  'alkalinity and calcium': calciumBesideAlkalinity,
  pH: phAgainstCo2,
  limewater: limeSolubility,
  salinity: salinityScales,
  'water changes': changesAdded,
  units: alkalinityUnits,
  'water and mains': dripLoop,
};

/** The picture of a card, or undefined where it has none. */
export function primerPicture(id: PrimerId): PrimerPicture | undefined {
  return drawings[id]?.();
}
