import { inRange } from '../problem.ts';
import { basisWords } from './basis-words.ts';
import type { Bases } from './basis.ts';
import type { CoralEntry } from './entry.ts';
import { upCm } from './say.ts';

export interface WidthOfHeads {
  readonly diameterCm: number;
  readonly basis: string;
}

const basis: Bases = [
  { kind: 'memory', note: 'usual width of one open head' },
  { kind: 'project rule', note: 'heads side by side in a round' },
];

/**
 * Open width of a colony of so many heads (1 to 200), cm, rounded up to what is printed: heads lie side by side in a
 * round, so the width goes with the square root of their number. One open head of a torch, hammer, frogspawn or octospawn
 * is taken as 7 cm, a zoanthid's as 1.2 cm, any other's as 3 cm, all from memory. Check: 4 heads of torch -> 14 cm; 1
 * head -> 7 cm; 2 heads -> 9.9 cm.
 *
 * Doubt: tall branches spread wider and short ones stand closer; a tape measure is better.
 */
export function widthOfHeads(entry: CoralEntry, heads: number): WidthOfHeads {
  const count = inRange('heads', heads, 1, 200, 'heads');
  return { diameterCm: upCm(headCm(entry) * Math.sqrt(count)), basis: basisWords(basis) };
}

/** Heads that have their place in a width, at least one: `widthOfHeads` turned round. Check: torch of 27 cm -> 14 heads. */
export function headsIn(entry: CoralEntry, diameterCm: number): number {
  return Math.max(1, Math.floor((diameterCm / headCm(entry)) ** 2 + 1e-6));
}

/** Width of one open head, cm. */
export function headCm({ tags, group }: CoralEntry): number {
  if (tags.some((tag) => ['torch', 'hammer', 'frogspawn', 'octospawn'].includes(tag))) return 7;
  return group === 'zoanthid' ? 1.2 : 3;
}
