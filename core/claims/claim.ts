import type { SourceCode } from '../sources.ts';
import type { Stated } from './stated.ts';

/** `depends`: the rule leaves out what decides it, or nothing published decides it. */
export type Verdict = 'right' | 'roughly right' | 'wrong' | 'depends';

/** What happens in a tank when the rule is followed. The numbers are those in `words`; they differ where it is a range. */
export interface Following {
  readonly words: string;
  readonly low: number;
  readonly high: number;
  readonly unit: string;
}

/** A rule that was passed on, held against what `core` works out. */
export interface Claim {
  /** Which kind of rule it is. */
  readonly kind: string;
  /** The rule as it was understood. */
  readonly rule: string;
  readonly verdict: Verdict;
  /** The right figure, as a sentence without its full stop; at most 124 characters, for a first line. */
  readonly figure: string;
  /** What belongs to the figure besides. */
  readonly besides?: string;
  readonly working: readonly string[];
  /** `waterL`: net litres, 1 to 1e6. Left out where following the rule has no number of its own. */
  readonly following?: (waterL: number) => Following;
  /** The rule shown on a reading, where the volume plays no part. */
  readonly example?: Following;
  readonly steps?: readonly string[];
  /** What can hurt whoever follows the rule, or what lives in the tank. */
  readonly dangers?: readonly string[];
  readonly cautions?: readonly string[];
  readonly sources: readonly SourceCode[];
}

/** One kind of rule, known by the quantities and names in it; undefined where it is another kind. */
export type Judge = (stated: Stated) => Claim | undefined;
