import type { CoralEntry } from './entry.ts';
import { isChemistry } from './pair-facts.ts';
import { pairRulesFor, type AppliedRule } from './pairs.ts';
import { pairNeed, type PairNeed } from './reach.ts';

/** Room between two kinds, cm edge to edge at full stretch: sting, reach, and soft beside stony. */
export interface PairRoom {
  readonly moveBelowCm: number;
  readonly watchBelowCm: number;
  readonly need: PairNeed;
  /** The rule about soft corals beside stony ones, where it holds. */
  readonly softBesideStony: AppliedRule | undefined;
}

/** Looked up once a pair of kinds, in this order: the rules never change. */
const known = new Map<CoralEntry, Map<CoralEntry, PairRoom>>();

/**
 * The thresholds of two kinds, wherever they stand. Soft beside stony: closer than the gap of Griffith 1997 (10 cm) one
 * should move when the soft side is known for chemicals, else they want watching.
 *
 * Check: torch beside hammer 20 cm (common practice); toadstool beside staghorn acropora 10 cm.
 */
export function pairRoom(a: CoralEntry, b: CoralEntry): PairRoom {
  const ofOne = known.get(a) ?? new Map<CoralEntry, PairRoom>();
  known.set(a, ofOne);
  const room = ofOne.get(b) ?? judged(a, b);
  ofOne.set(b, room);
  return room;
}

function judged(a: CoralEntry, b: CoralEntry): PairRoom {
  const need = pairNeed(a, b);
  const softBesideStony = pairRulesFor(a, b).find(isChemistry);
  const gapCm = softBesideStony?.rule.gapCm ?? 0;
  const chemical = softBesideStony?.a.sting.weapons.includes('chemical') === true;
  return {
    moveBelowCm: Math.max(need.moveBelowCm, chemical ? gapCm : 0),
    watchBelowCm: Math.max(need.watchBelowCm, gapCm),
    need,
    softBesideStony,
  };
}
