import type { Case } from '../core/language/case.ts';

/** What a member told in one thread or post. */
export interface Told {
  /** The place by its id, and whether others could read the answers there. */
  readonly place: string;
  /** When its last message came. */
  readonly atMs: number;
  readonly told: Case;
}

/** How long it is kept there after its last message, days. */
export const TOLD_DAYS = 3;
/** Threads and posts of one member it is kept of, the latest. */
export const MOST_TOLD = 50;

/** The part of a `Keep` about it. It is written by the talks themselves. */
export interface ToldKeep {
  /** The latest first. */
  readonly told: () => readonly Told[];
}
