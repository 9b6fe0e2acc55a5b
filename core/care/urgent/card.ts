import type { SourceCode } from '../../sources.ts';

/**
 * What to do in one emergency, in the order to do it. Texts are common practice unless `sources` names more; a published
 * finding is named in `published`. No card holds a dose of a medicine.
 */
export interface UrgentCard {
  /** On a button: at most 40 letters. */
  readonly label: string;
  /** The first thing to do, in one sentence. */
  readonly first: string;
  readonly steps: readonly string[];
  /** What can be done before it happens, where that is announced. */
  readonly ahead?: string;
  /** What makes it worse. */
  readonly never: readonly string[];
  /** When to stop and ask, and whom. */
  readonly stop: string;
  /** What was read in papers, with the paper. */
  readonly published?: readonly string[];
  readonly sources: readonly SourceCode[];
}
