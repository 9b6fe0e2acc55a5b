import type { Answer, Fact } from '../../../commands/answer.ts';

/** An answer with its picture drawn as PNG; without `png` a picture is told by its alt text. */
export interface Drawn extends Answer {
  readonly png?: Uint8Array;
  /** Custom id of a button that posts it. */
  readonly postId?: string;
  /** What this platform has to add; never left out. */
  readonly notes?: readonly Fact[];
}
