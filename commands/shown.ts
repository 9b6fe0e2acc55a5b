import type { Reading, Tank } from './keep.ts';
import type { Glass, Placing } from './placed.ts';

/** Someone who may see a tank of the member's, until when. */
export interface Viewer {
  /** Discord id. */
  readonly helperId: string;
  readonly untilMs: number;
}

/** A tank of someone else that the member may see, until when. */
export interface Showing {
  /** Discord id. */
  readonly ownerId: string;
  readonly tankId: number;
  readonly tankName: string;
  readonly untilMs: number;
}

/** What is seen of it: a copy, so that nothing can be done to it. */
export interface ShownTank extends Showing {
  readonly tank: Tank;
  readonly glass: Glass;
  /** The newest reading of each parameter, without its note. */
  readonly latest: readonly Omit<Reading, 'note'>[];
  /** In the order they came. */
  readonly corals: readonly Placing[];
}

/** Helpers who may see one tank at a time. */
export const MOST_HELPERS = 5;
/** A tank is shown for so long, and no longer. */
export const SHOWN_MS = 24 * 60 * 60 * 1000;

/**
 * The part of a `Keep` about showing a tank to someone who helps; bound to one member as all of it. What is not shown
 * now, by its owner, to this very member does not exist.
 */
export interface ShownKeep {
  /** Those who may see a tank of one's own now, in the order of their end. */
  readonly viewers: (tankId: number) => readonly Viewer[];
  /**
   * Shows a tank of one's own for `SHOWN_MS` from now, also where it is shown already; undefined for a tank of others.
   *
   * @throws Problem when it is shown to `MOST_HELPERS` others already, or when the helper is the member.
   */
  readonly showTo: (tankId: number, helperId: string) => Viewer | undefined;
  /** Takes it back at once. */
  readonly hideFrom: (tankId: number, helperId: string) => boolean;
  /** What others show to this member now, in the order of their end. */
  readonly shownToMe: () => readonly Showing[];
  readonly shownTank: (tankId: number) => ShownTank | undefined;
}
