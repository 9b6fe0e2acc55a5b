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

/** Letters to insert, drop, replace or swap with their neighbour to turn one word into the other. */
export function editDistance(a: string, b: string): number {
  const rows = [Array.from({ length: b.length + 1 }, (_, index) => index)];
  const at = (i: number, j: number): number => rows[i]?.[j] ?? Infinity;
  for (let i = 1; i <= a.length; i += 1) {
    const row = [i];
    rows.push(row);
    for (let j = 1; j <= b.length; j += 1) {
      const replaced = at(i - 1, j - 1) + (a[i - 1] === b[j - 1] ? 0 : 1);
      const swaps = a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      const swapped = swaps ? at(i - 2, j - 2) + 1 : Infinity;
      row.push(Math.min(replaced, swapped, at(i - 1, j) + 1, at(i, j - 1) + 1));
    }
  }
  return at(a.length, b.length);
}
