import type { CoralEntry } from './entry.ts';

/** How far a coral harms, cm at full stretch beyond its open width; 0 where it has no sting that travels. */
export interface StingReach {
  readonly lowCm: number;
  readonly highCm: number;
  /** A sting of moderate strength or more: its low end asks for a move. */
  readonly harms: boolean;
}

/**
 * Reach of a coral at full stretch in still water, cm. What it does with chemicals is left to the chemistry rule, what it
 * does by growing over others to the growth rule.
 */
export function stingReach({ sting }: CoralEntry): StingReach {
  const { potency, weapons, reachLowCm, reachHighCm } = sting;
  if (potency === 'none' || weapons.includes('chemical')) return { lowCm: 0, highCm: 0, harms: false };
  return { lowCm: reachLowCm, highCm: reachHighCm, harms: potency !== 'mild' };
}
