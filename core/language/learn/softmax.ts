import { numbersFrom } from './random.ts';

/** Features of one example: places in the vocabulary and their values. */
export interface Vector {
  readonly ids: Int32Array;
  readonly values: Float32Array;
}

/** What an example should come out as: classes with the shares they have of one. */
export interface Example {
  readonly vector: Vector;
  readonly target: readonly (readonly [label: number, share: number])[];
}

export interface Fitting {
  readonly epochs: number;
  /** Size of the first step; each feature's own steps shrink with what it was moved (Adagrad). */
  readonly rate: number;
  /** Pull of every weight towards zero at each step that touches it. */
  readonly decay: number;
  readonly seed: number;
  /** Share of an example's features left out at each look at it, so that no word alone is leant on. */
  readonly dropped: number;
  /** How many times it is learnt from another seed; the weights are the mean. 1 unless given. */
  readonly runs?: number;
}

/** A linear model: `weights[feature * labels + label]`. */
export interface Linear {
  readonly labels: number;
  readonly weights: Float32Array;
}

/** From this share of the epochs on the weights are averaged. Own choice. */
const SETTLED = 0.5;

/**
 * Multinomial logistic regression by stochastic gradient descent; the weights are the mean of those after each epoch of
 * the second half, since the last alone are as much of the order of the examples as of what they say. Deterministic: the
 * same examples in the same order and the same seed give the same weights.
 *
 * Bishop, Pattern Recognition and Machine Learning (2006), 4.3.4, eq. 4.109 (gradient); Duchi, Hazan and Singer, J.
 * Mach. Learn. Res. 12 (2011) 2121, for the shrinking steps; Polyak and Juditsky, SIAM J. Control Optim. 30 (1992) 838,
 * for the mean. All from memory.
 */
export function fitSoftmax(
  examples: readonly Example[],
  features: number,
  labels: number,
  fitting: Fitting,
): Linear {
  const { seed, runs = 1 } = fitting;
  const mean = new Float32Array(features * labels);
  for (let run = 0; run < runs; run++)
    descend(examples, { features, labels, mean }, { ...fitting, seed: seed + 1000 * run, runs });
  return { labels, weights: mean };
}

/** Learns once, and adds its share to the mean. */
function descend(
  examples: readonly Example[],
  {
    features,
    labels,
    mean,
  }: { readonly features: number; readonly labels: number; readonly mean: Float32Array },
  { epochs, rate, decay, seed, dropped, runs }: Required<Fitting>,
): void {
  const weights = new Float32Array(features * labels);
  const moved = new Float32Array(features).fill(1e-8);
  const random = numbersFrom(seed);
  const order = examples.map((_, at) => at);
  const out = new Float32Array(labels);
  const averaged = Math.ceil(epochs * SETTLED);
  for (let epoch = 0; epoch < epochs; epoch++) {
    shuffle(order, random);
    for (const at of order) {
      const example = examples[at];
      if (example === undefined) continue;
      const vector = thinned(example.vector, dropped, random);
      const { ids, values } = vector;
      score(weights, labels, vector, out);
      softmaxInPlace(out);
      for (const [label, share] of example.target) out[label] = (out[label] ?? 0) - share;
      let steep = 0;
      for (let label = 0; label < labels; label++) steep += (out[label] ?? 0) ** 2;
      for (let n = 0; n < ids.length; n++) {
        const id = ids[n] ?? 0;
        const value = values[n] ?? 0;
        const base = id * labels;
        const sum = (moved[id] ?? 0) + steep * value * value;
        moved[id] = sum;
        const step = rate / Math.sqrt(sum);
        for (let label = 0; label < labels; label++) {
          const weight = weights[base + label] ?? 0;
          weights[base + label] = weight - step * ((out[label] ?? 0) * value + decay * weight);
        }
      }
    }
    if (epoch >= epochs - averaged) addShare(mean, weights, averaged * runs);
  }
}

function addShare(mean: Float32Array, weights: Float32Array, parts: number): void {
  for (let at = 0; at < mean.length; at++) mean[at] = (mean[at] ?? 0) + (weights[at] ?? 0) / parts;
}

/** The vector with a share of its features left out and the others made up for it. */
function thinned({ ids, values }: Vector, dropped: number, random: () => number): Vector {
  if (dropped === 0) return { ids, values };
  const kept: number[] = [];
  for (let n = 0; n < ids.length; n++) if (random() >= dropped) kept.push(n);
  return {
    ids: Int32Array.from(kept, (n) => ids[n] ?? 0),
    values: Float32Array.from(kept, (n) => (values[n] ?? 0) / (1 - dropped)),
  };
}

/** Adds up a vector's weights for each label into `out`. */
export function score(
  weights: Float32Array | Int8Array,
  labels: number,
  { ids, values }: Vector,
  out: Float32Array,
): void {
  out.fill(0);
  for (let n = 0; n < ids.length; n++) {
    const base = (ids[n] ?? 0) * labels;
    const value = values[n] ?? 0;
    for (let label = 0; label < labels; label++)
      out[label] = (out[label] ?? 0) + (weights[base + label] ?? 0) * value;
  }
}

/** Scores to probabilities, in place. */
export function softmaxInPlace(scores: Float32Array): void {
  let most = -Infinity;
  for (const one of scores) most = Math.max(most, one);
  let sum = 0;
  for (let at = 0; at < scores.length; at++) {
    const share = Math.exp((scores[at] ?? 0) - most);
    scores[at] = share;
    sum += share;
  }
  for (let at = 0; at < scores.length; at++) scores[at] = (scores[at] ?? 0) / sum;
}

function shuffle(order: number[], random: () => number): void {
  for (let at = order.length - 1; at > 0; at--) {
    const other = Math.floor(random() * (at + 1));
    const kept = order[at] ?? 0;
    order[at] = order[other] ?? 0;
    order[other] = kept;
  }
}
