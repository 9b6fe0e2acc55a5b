/** Answers, and calls of their buttons, are held as long as this. */
export const HELD_DAYS = 30;

/** The part of a keep that tells of them. */
export interface HeldKeep {
  /** Ids of what is held of this member. */
  readonly held: () => readonly string[];
}
