import type { CoralEntry } from './entry.ts';

/** Bare ground kept round a soft mat that creeps, cm: common practice (mats creep over rock, not well over sand). */
export const CLEAR_OF_MAT_CM = 10;
/** Room kept between polyps that spread, cm: common practice, 2 to 5. */
const CLEAR_OF_POLYPS_CM = 5;

/** Whether it wins by growing over its neighbours rather than by stinging. */
export function spreads({ sting }: CoralEntry): boolean {
  return sting.weapons.includes('overgrowth');
}

/** Whether it is a soft coral: as a mat it wins over polyps too. */
export function isSoft({ group }: CoralEntry): boolean {
  return group === 'soft';
}

/** Of two unlike kinds the one that grows over the other: soft before polyps, then the faster; undefined for none. */
export function spreaderOf(one: CoralEntry, other: CoralEntry): CoralEntry | undefined {
  if (one === other) return undefined;
  const [first] = [one, other].filter(spreads).sort((a, b) => vigour(b) - vigour(a));
  return first;
}

/** Ground to keep clear round one that spreads, cm. */
export function clearOfCm(spreader: CoralEntry): number {
  return isSoft(spreader) ? CLEAR_OF_MAT_CM : CLEAR_OF_POLYPS_CM;
}

function vigour(entry: CoralEntry): number {
  return (isSoft(entry) ? 1000 : 0) + entry.growth.highCmPerYear;
}
