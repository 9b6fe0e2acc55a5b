import { weighed, type Frame } from './frame.ts';
import type { Kind } from './kinds.ts';

/** How much likelier a kind is in a story than alone, where it has not come up yet and where it has (`fit-story.ts`). */
export type StoryShares = Readonly<Partial<Record<Kind, { readonly fresh: number; readonly again: number }>>>;

/**
 * Frames of a message in the course of a story: people tell before they ask, and what has come up comes up again, while a
 * new trouble is rarer than among messages that stand alone. `before` are the kinds of the messages before it.
 */
export function inStory(
  frames: readonly Frame[],
  before: readonly Kind[],
  shares: StoryShares,
): readonly Frame[] {
  const come = new Set(before);
  return weighed(frames, ({ kind }) => {
    const { fresh = 1, again = 1 } = shares[kind] ?? {};
    return come.has(kind) ? again : fresh;
  });
}
