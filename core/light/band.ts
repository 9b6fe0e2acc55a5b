import { inRange } from '../problem.ts';
import { fixed } from '../quantity/format.ts';

/**
 * The brightest light taken as a reading or a goal, umol m-2 s-1. Full sun at noon is about 2000 (from memory);
 * the rest is room for an instrument that reads a little high.
 */
export const MAX_PPFD = 2500;

/** Checks a photon flux density: above 0 and at most `MAX_PPFD` umol m-2 s-1. Throws Problem otherwise. */
export function inPpfdRange(field: string, ppfd: number): number {
  return inRange(field, ppfd, 1, MAX_PPFD, 'PAR');
}

/** A photon flux density as it is printed and so as it is judged: whole, below 20 umol m-2 s-1 to a tenth. */
export function shownPpfd(ppfd: number): number {
  return ppfd < 19.95 ? Math.round(ppfd * 10) / 10 : Math.round(ppfd);
}

/** "133 PAR"; below 20 with one decimal. */
export function par(ppfd: number): string {
  return `${fixed(shownPpfd(ppfd), 1)} PAR`;
}

/** "90 to 110 PAR", or "90 PAR" where both ends print the same. */
export function parRange(lowPpfd: number, highPpfd: number): string {
  const [low, high] = [shownPpfd(lowPpfd), shownPpfd(highPpfd)];
  return low === high ? par(low) : `${fixed(low, 1)} to ${par(high)}`;
}

/** The words for light at the coral and the border above each, umol m-2 s-1, each twice the one before: project rule. */
export const lightBands = [
  { word: 'dim', toPpfd: 40, borders: 'under 40' },
  { word: 'soft', toPpfd: 80, borders: '40 to 80' },
  { word: 'middling', toPpfd: 160, borders: '80 to 160' },
  { word: 'bright', toPpfd: 320, borders: '160 to 320' },
  { word: 'very bright', toPpfd: MAX_PPFD, borders: 'over 320' },
] as const;

export type LightBand = (typeof lightBands)[number]['word'];

/** The word for a photon flux density, umol m-2 s-1, as it is printed. 40 is soft; any other border is in its lower band. */
export function lightBand(ppfd: number): LightBand {
  const shown = shownPpfd(ppfd);
  const found = lightBands.find(({ word, toPpfd }) => (word === 'dim' ? shown < toPpfd : shown <= toPpfd));
  return found?.word ?? 'very bright';
}

/** "under 40 dim, 40 to 80 soft, ...": all the words with their borders, in PAR. */
export const lightBandWords = lightBands.map(({ word, borders }) => `${borders} ${word}`).join(', ');
