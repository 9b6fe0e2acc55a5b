import type { HandOver, Progress, Reminder } from '../../commands/reminder.ts';

/** A reminder whose time has come, claimed by this loop until its lease runs out. */
export interface DueReminder {
  readonly reminder: Reminder;
  /** Discord id of the owner. */
  readonly ownerId: string;
  /** The accepted hand-over it falls under at this moment: then the sitter gets it. */
  readonly handOver?: HandOver | undefined;
  /** The occurrence, or the later time the member chose. */
  readonly dueMs: number;
  /** How often sending was begun before: above 0 the message may be there already. */
  readonly attempts: number;
}

/** What has to be told about a hand-over next. */
export type HandOverNews = 'ask the sitter' | 'accepted' | 'declined' | 'ended';

export interface DueHandOver {
  readonly handOver: HandOver;
  readonly news: HandOverNews;
  readonly attempts: number;
}

/**
 * What the clock loop asks of the store. Every write has reached the disk when the function returns. `claim` puts each
 * row off until the lease is over, in one immediate transaction, so that a loop that dies gives it back by itself.
 */
export interface DueStore {
  /** At most `most`, the longest due first. Counts the attempt. */
  readonly claim: (nowMs: number, most: number, leaseMs: number) => readonly DueReminder[];
  /**
   * The claimed occurrence is settled (sent, or passed over): sets the progress and forgets attempts. Nothing happens
   * when the member changed, moved or removed the reminder meanwhile (it is no longer due at `dueMs`).
   */
  readonly settle: (id: number, dueMs: number, progress: Progress) => void;
  /** To be tried again at `againMs`. The attempt stays counted: the message may be there, and the wait grows with it. */
  readonly putOff: (id: number, dueMs: number, againMs: number) => void;
  /** As `settle`, with a sentence the owner is shown at their next command. */
  readonly stop: (id: number, dueMs: number, progress: Progress, notice: string) => void;

  readonly claimHandOvers: (nowMs: number, most: number, leaseMs: number) => readonly DueHandOver[];
  /** The news was told; `notice` is for the owner where the sitter could not be reached (the hand-over is then over). */
  readonly settleHandOver: (id: number, news: HandOverNews, notice?: string) => void;
  readonly putOffHandOver: (id: number, againMs: number) => void;
}
