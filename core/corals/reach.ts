import type { CoralEntry } from './entry.ts';
import { pairFacts, type PairFacts } from './pair-facts.ts';

/** What decides between two kinds: below the first one should move, below the second they want watching. */
export interface PairNeed {
  readonly moveBelowCm: number;
  readonly watchBelowCm: number;
  readonly facts: PairFacts;
}

/**
 * The thresholds of two kinds, facts about the pair before the potency tiers. The tiers: under the low end of a sting of
 * moderate strength or more, move; under the high end of any, watch. A factor is what the water adds to the reach of
 * that side (`carried`).
 *
 * Check: torch beside hammer 20 cm (common practice), hammer beside frogspawn 0 and 3, Galaxea beside anything 30.
 */
export function pairNeed(one: CoralEntry, other: CoralEntry, oneFactor = 1, otherFactor = 1): PairNeed {
  const facts = pairFacts(one, other);
  const { moveGapCm, watchGapCm, tiers, oneReach, otherReach } = facts;
  if (tiers === 'none') return { moveBelowCm: moveGapCm, watchBelowCm: watchGapCm, facts };
  const full = tiers === 'full';
  const oneLow = full && oneReach.harms ? oneReach.lowCm * oneFactor : 0;
  const otherLow = full && otherReach.harms ? otherReach.lowCm * otherFactor : 0;
  const moveBelowCm = Math.max(moveGapCm, oneLow, otherLow);
  const far = Math.max(oneReach.highCm * oneFactor, otherReach.highCm * otherFactor);
  return { moveBelowCm, watchBelowCm: Math.max(moveBelowCm, watchGapCm, far), facts };
}
