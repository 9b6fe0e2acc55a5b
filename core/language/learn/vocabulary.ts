import type { FeatureGroup } from './features.ts';
import type { Vector } from './softmax.ts';

/** Features by their hash, each at a place of its own. */
export type Vocabulary = ReadonlyMap<number, number>;

/** The features that at least `least` examples have, in the order they were met. */
export function vocabularyOf(examples: Iterable<readonly FeatureGroup[]>, least: number): Vocabulary {
  const counts = new Map<number, number>();
  for (const groups of examples)
    for (const { ids } of groups) for (const id of ids) counts.set(id, (counts.get(id) ?? 0) + 1);
  const places = new Map<number, number>();
  for (const [id, count] of counts) if (count >= least) places.set(id, places.size);
  return places;
}

/** Groups as one vector over the vocabulary; each group has its weight as length, however many features it has. */
export function vectorOf(groups: readonly FeatureGroup[], vocabulary: Vocabulary): Vector {
  const ids: number[] = [];
  const values: number[] = [];
  for (const { ids: given, weight } of groups) {
    const value = weight / Math.sqrt(Math.max(given.length, 1));
    for (const id of given) {
      const place = vocabulary.get(id);
      if (place === undefined) continue;
      ids.push(place);
      values.push(value);
    }
  }
  return { ids: Int32Array.from(ids), values: Float32Array.from(values) };
}
