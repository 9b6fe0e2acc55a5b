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

/** Letters to insert, drop or replace to turn one word into the other (Levenshtein). */
export function editDistance(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, index) => index);
  for (let i = 1; i <= a.length; i += 1) {
    const next = [i];
    for (let j = 1; j <= b.length; j += 1) {
      const replaced = (row[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1);
      next.push(Math.min(replaced, (row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1));
    }
    row = next;
  }
  return row[b.length] ?? 0;
}
