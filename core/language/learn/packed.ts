import type { Linear, Vector } from './softmax.ts';
import type { Vocabulary } from './vocabulary.ts';

/**
 * A linear model in a quarter of the space: one byte a weight and a scale for each feature. Features are found by their
 * hash in a sorted list. The rounding moves a score by at most half a step of each feature's scale.
 */
export interface Packed {
  readonly labels: readonly string[];
  readonly hashes: Uint32Array;
  readonly scales: Float32Array;
  readonly weights: Int8Array;
  /** What scores are divided by before they become probabilities; fitted on messages the weights have not seen. */
  readonly temperature: number;
}

/** Packs the `most` features that weigh most, in the order of their hashes. */
export function pack(
  { labels: count, weights }: Linear,
  vocabulary: Vocabulary,
  labels: readonly string[],
  most: number,
  temperature: number,
): Packed {
  const rows = [...vocabulary].map(([hash, place]) => {
    let largest = 0;
    for (let label = 0; label < count; label++)
      largest = Math.max(largest, Math.abs(weights[place * count + label] ?? 0));
    return { hash, place, largest };
  });
  const kept = rows
    .sort((a, b) => b.largest - a.largest || a.hash - b.hash)
    .slice(0, most)
    .sort((a, b) => a.hash - b.hash);
  const bytes = new Int8Array(kept.length * count);
  kept.forEach(({ place, largest }, row) => {
    for (let label = 0; label < count; label++)
      bytes[row * count + label] = Math.round((127 * (weights[place * count + label] ?? 0)) / (largest || 1));
  });
  return {
    labels,
    hashes: Uint32Array.from(kept, ({ hash }) => hash),
    scales: Float32Array.from(kept, ({ largest }) => (largest || 1) / 127),
    weights: bytes,
    temperature,
  };
}

/** Probability of each label, in the order of `labels`. */
export function probabilities(
  { labels, scales, weights, temperature }: Packed,
  { ids, values }: Vector,
): Float32Array {
  const out = new Float32Array(labels.length);
  for (let n = 0; n < ids.length; n++) {
    const row = ids[n] ?? 0;
    const base = row * labels.length;
    const value = (values[n] ?? 0) * (scales[row] ?? 0);
    for (let label = 0; label < labels.length; label++)
      out[label] = (out[label] ?? 0) + (weights[base + label] ?? 0) * value;
  }
  let most = -Infinity;
  for (const one of out) most = Math.max(most, one);
  let sum = 0;
  for (let at = 0; at < out.length; at++) {
    out[at] = Math.exp(((out[at] ?? 0) - most) / temperature);
    sum += out[at] ?? 0;
  }
  for (let at = 0; at < out.length; at++) out[at] = (out[at] ?? 0) / sum;
  return out;
}

/** Places of the hashes, for `vectorOf`. */
export function vocabularyIn({ hashes }: Packed): Vocabulary {
  const places = new Map<number, number>();
  hashes.forEach((hash, place) => places.set(hash, place));
  return places;
}
