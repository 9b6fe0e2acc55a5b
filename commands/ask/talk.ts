import type { Case } from '../../core/language/case.ts';

/** The case of one person in one place, and where it is put down again. */
export interface Talk {
  readonly before: Case | undefined;
  /** Puts it down; undefined where there is nothing to go on from any more. */
  readonly remember: (after: Case | undefined) => void;
}
