import type { Answer, Fact } from '../../../commands/answer.ts';

/** An answer with its pictures drawn as PNG, in their order; one that is not drawn is told by its alt text. */
export interface Drawn extends Answer {
  readonly pngs?: readonly (Uint8Array | undefined)[];
  /** Custom id of a button that posts it. */
  readonly postId?: string;
  /** What this platform has to add; never left out. */
  readonly notes?: readonly Fact[];
}
