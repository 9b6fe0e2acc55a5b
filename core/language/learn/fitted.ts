import type { FeatureGroup } from './features.ts';
import { pack, type Packed } from './packed.ts';
import { fitSoftmax, type Example, type Fitting } from './softmax.ts';
import { vectorOf, vocabularyIn, vocabularyOf } from './vocabulary.ts';

/** Features met in fewer messages are noise. */
const LEAST = 2;
export interface Wanted {
  readonly groups: readonly FeatureGroup[];
  readonly target: Example['target'];
  /** A disturbed copy: what only copies hold is not learnt of. */
  readonly isCopy?: boolean;
}

/** A packed linear model of the `most` most frequent features of what is wanted. */
export function fitted(
  wanted: readonly Wanted[],
  labels: readonly string[],
  most: number,
  fitting: Fitting,
  temperature: number,
): Packed {
  const hashes = vocabularyOf(
    wanted.filter(({ isCopy }) => isCopy !== true).map(({ groups }) => groups),
    LEAST,
    most,
  );
  const vocabulary = vocabularyIn(hashes);
  const examples = wanted.map(({ groups, target }): Example => ({
    vector: vectorOf(groups, vocabulary),
    target,
  }));
  return pack(fitSoftmax(examples, hashes.length, labels.length, fitting), hashes, labels, temperature);
}
