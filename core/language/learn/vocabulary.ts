import type { FeatureGroup } from './features.ts';
import type { Vector } from './softmax.ts';

/** Features by their hash, each at a place of its own; -1 for one that was not learnt of. */
export interface Vocabulary {
  readonly size: number;
  readonly placeOf: (hash: number) => number;
}

/** The features that at least `least` examples have, the most frequent `most` of them, in the order of their hashes. */
export function vocabularyOf(
  examples: Iterable<readonly FeatureGroup[]>,
  least: number,
  most: number,
): Uint32Array {
  const counts = new Map<number, number>();
  for (const groups of examples)
    for (const { ids } of groups) for (const id of ids) counts.set(id, (counts.get(id) ?? 0) + 1);
  const kept = [...counts].filter(([, count]) => count >= least).sort((a, b) => b[1] - a[1] || a[0] - b[0]);
  return Uint32Array.from(kept.slice(0, most), ([hash]) => hash).sort();
}

/** Places in a sorted list of hashes, found by halving: nothing is built when a model is loaded. */
export function vocabularyIn(hashes: Uint32Array): Vocabulary {
  return {
    size: hashes.length,
    placeOf: (hash) => {
      let low = 0;
      let high = hashes.length - 1;
      while (low <= high) {
        const middle = (low + high) >>> 1;
        const here = hashes[middle] ?? 0;
        if (here === hash) return middle;
        if (here < hash) low = middle + 1;
        else high = middle - 1;
      }
      return -1;
    },
  };
}

/** Groups as one vector over the vocabulary; each group has its weight as length, however many features it has. */
export function vectorOf(groups: readonly FeatureGroup[], vocabulary: Vocabulary): Vector {
  const ids: number[] = [];
  const values: number[] = [];
  for (const { ids: given, weight } of groups) {
    const value = weight / Math.sqrt(Math.max(given.length, 1));
    for (const id of given) {
      const place = vocabulary.placeOf(id);
      if (place < 0) continue;
      ids.push(place);
      values.push(value);
    }
  }
  return { ids: Int32Array.from(ids), values: Float32Array.from(values) };
}
