import { editDistance } from '../core/edit-distance.ts';

const LONGEST_WORD = 32;

/** The candidate most like `word`: one it begins, or one at most half its letters away. */
export function nearest(word: string, candidates: readonly string[]): string | undefined {
  const wanted = word.toLowerCase().slice(0, LONGEST_WORD);
  if (wanted === '') return undefined;
  const begun = candidates.find((candidate) => candidate.startsWith(wanted));
  if (begun !== undefined) return begun;
  const ranked = candidates
    .map((candidate) => ({ candidate, away: editDistance(wanted, candidate) }))
    .sort((a, b) => a.away - b.away);
  const [best] = ranked;
  return best !== undefined && best.away <= wanted.length / 2 ? best.candidate : undefined;
}
