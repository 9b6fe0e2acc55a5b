/**
 * Letters to insert, drop, replace or swap with their neighbour to turn one word into the other (optimal string
 * alignment). Check: "hamer" to "hammer" 1, "spwan" to "spawn" 1, "kitten" to "sitting" 3.
 */
export function editDistance(a: string, b: string): number {
  const rows = [Array.from({ length: b.length + 1 }, (_, index) => index)];
  const at = (i: number, j: number): number => rows[i]?.[j] ?? Infinity;
  for (let i = 1; i <= a.length; i += 1) {
    const row = [i];
    rows.push(row);
    for (let j = 1; j <= b.length; j += 1) {
      const replaced = at(i - 1, j - 1) + (a[i - 1] === b[j - 1] ? 0 : 1);
      const swaps = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      const swapped = swaps ? at(i - 2, j - 2) + 1 : Infinity;
      row.push(Math.min(replaced, swapped, at(i - 1, j) + 1, at(i, j - 1) + 1));
    }
  }
  return at(a.length, b.length);
}
