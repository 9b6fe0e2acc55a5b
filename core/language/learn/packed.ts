import type { Linear, Vector } from './softmax.ts';

/**
 * A linear model in an eighth of the space: half a byte a weight and a scale for each feature. Features are found by their
 * hash in a sorted list. The rounding moves a score by at most half a step of each feature's scale: over the hundred and
 * more features of a message that is lost (v1: no kind changed).
 */
export interface Packed {
  readonly labels: readonly string[];
  readonly hashes: Uint32Array;
  readonly scales: Float32Array;
  readonly weights: Int8Array;
  /** What scores are divided by before they become probabilities; fitted on messages the weights have not seen. */
  readonly temperature: number;
}

/** What half a byte holds on either side of zero. */
const STEPS = 7;

/** Packs weights whose features stand in the order of `hashes`. */
export function pack(
  { labels: count, weights }: Linear,
  hashes: Uint32Array,
  labels: readonly string[],
  temperature: number,
): Packed {
  const scales = Float32Array.from(hashes, (_, row) => {
    let largest = 0;
    for (let label = 0; label < count; label++)
      largest = Math.max(largest, Math.abs(weights[row * count + label] ?? 0));
    return (largest || 1) / STEPS;
  });
  const bytes = Int8Array.from(weights, (weight, at) =>
    Math.round(weight / (scales[Math.floor(at / count)] ?? 1)),
  );
  return { labels, hashes, scales, weights: bytes, temperature };
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

/** Two weights a byte, the first in its upper half. */
export function halved(weights: Int8Array): Uint8Array {
  return Uint8Array.from(
    { length: Math.ceil(weights.length / 2) },
    (_, at) => (((weights[2 * at] ?? 0) + STEPS) << 4) | ((weights[2 * at + 1] ?? 0) + STEPS),
  );
}

/** What `halved` took: that many weights. A plain loop: of ten million it takes 30 ms, `Int8Array.from` ten times that. */
export function whole(halves: Uint8Array, length: number): Int8Array {
  const weights = new Int8Array(length);
  for (let at = 0; at < length; at++) {
    const byte = halves[at >> 1] ?? 0;
    weights[at] = (at % 2 === 0 ? byte >> 4 : byte & 15) - STEPS;
  }
  return weights;
}
