import type { Finding } from './scene.ts';

/** A coral to move first, and how many corals or pairs to move that would answer. */
export interface Mover {
  readonly id: number;
  readonly cures: number;
}

/**
 * Few corals whose moving would answer every 'move' finding, the one that answers most first; of equals the one at risk
 * in the worst finding. Several findings of one pair count once. A greedy choice, so now and then one more than the least.
 *
 * Check: one coral too near to three others -> that one alone, for three.
 */
export function fewestMoves(findings: readonly Finding[]): readonly Mover[] {
  const moves = findings.filter(({ verdict }) => verdict === 'move');
  const groups = new Map<string, readonly number[]>();
  for (const { corals } of moves) {
    const key = [...corals].sort((a, b) => a - b).join();
    if (!groups.has(key)) groups.set(key, corals);
  }
  return chosen([...groups.values()]);
}

function chosen(groups: readonly (readonly number[])[]): readonly Mover[] {
  const counts = new Map<number, number>();
  for (const id of groups.flat()) counts.set(id, (counts.get(id) ?? 0) + 1);
  const [best] = [...counts].sort((a, b) => b[1] - a[1]);
  if (best === undefined) return [];
  const [id, cures] = best;
  return [{ id, cures }, ...chosen(groups.filter((corals) => !corals.includes(id)))];
}
