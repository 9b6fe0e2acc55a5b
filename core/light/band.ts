import { inRange } from '../problem.ts';

/**
 * The brightest light taken as a reading or a goal, umol m-2 s-1. Full sun at noon is about 2000 (from memory);
 * the rest is room for an instrument that reads a little high.
 */
export const MAX_PPFD = 2500;

/** Checks a photon flux density: above 0 and at most `MAX_PPFD` umol m-2 s-1. Throws Problem otherwise. */
export function inPpfdRange(field: string, ppfd: number): number {
  return inRange(field, ppfd, 1, MAX_PPFD, 'PAR');
}

/** Where the bands meet, umol m-2 s-1: common practice, no source. A value on a border is in the lower band. */
export const bandEdgesPpfd = { low: 50, moderate: 100, high: 200, veryHigh: 300 } as const;

export type LightBand = 'very low' | 'low' | 'moderate' | 'high' | 'very high';

/**
 * The word for a photon flux density at the coral, `ppfd` in umol m-2 s-1: under 50 very low, 50 to 100 low,
 * to 200 moderate, to 300 high, over 300 very high. Common practice, no source.
 */
export function lightBand(ppfd: number): LightBand {
  if (ppfd < bandEdgesPpfd.low) return 'very low';
  if (ppfd <= bandEdgesPpfd.moderate) return 'low';
  if (ppfd <= bandEdgesPpfd.high) return 'moderate';
  return ppfd <= bandEdgesPpfd.veryHigh ? 'high' : 'very high';
}

/**
 * Most large-polyp stony corals, umol m-2 s-1: where they live, and a safe start for a new one (just over 100).
 * Common practice, no source; the coral's own entry comes first.
 */
export const largePolypPpfd = { low: 50, high: 200, start: 100 } as const;
