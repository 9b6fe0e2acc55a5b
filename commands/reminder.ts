import type { Rule } from '../core/schedule/rule.ts';
import type { ParameterId } from '../core/water/parameter.ts';

/** Where a reminder is sent: to the member alone, or into a channel of a server. */
export type Place =
  | { readonly kind: 'direct' }
  | { readonly kind: 'channel'; readonly serverId: string; readonly channelId: string };

/** What is to be done when. The anchor and the zone are the truth; every instant is counted from them. */
export interface Plan {
  /** What is due, in the member's words: "test alkalinity and calcium", "change filter floss". */
  readonly text: string;
  /** What a test measures; empty for a task. */
  readonly parameters: readonly ParameterId[];
  readonly tankId?: number | undefined;
  /** Local date and time the rule counts from: "2026-01-03 09:00". */
  readonly anchor: string;
  /** IANA name. */
  readonly zone: string;
  readonly rule: Rule;
  /** How many occurrences there are, where they end: a dose split over days. */
  readonly times?: number | undefined;
  readonly place: Place;
}

/** Nothing is sent from `fromMs` until `untilMs`; without an end until it is resumed. */
export interface Pause {
  readonly fromMs: number;
  readonly untilMs?: number | undefined;
}

/** How far a plan has got. */
export interface Progress {
  /** The next occurrence to be sent; undefined when there is none (over, or waiting to be done or resumed). */
  readonly nextMs?: number | undefined;
  /** One more time for the occurrence sent last: the member said "later". */
  readonly againMs?: number | undefined;
  readonly pause?: Pause | undefined;
  readonly lastDoneMs?: number | undefined;
  /** Why the last one could not be delivered, in a sentence for the member; it is stopped until they change or resume it. */
  readonly trouble?: string | undefined;
}

export interface Reminder extends Plan, Progress {
  readonly id: number;
}

/** A span in which someone else gets the reminders of a tank, or of all tanks. */
export interface NewHandOver {
  /** Discord id of the sitter. */
  readonly sitterId: string;
  /** All tanks where it is not said. */
  readonly tankId?: number | undefined;
  readonly fromMs: number;
  readonly untilMs: number;
}

export interface HandOver extends NewHandOver {
  readonly id: number;
  /** Discord id of the owner. */
  readonly ownerId: string;
  /** Asked: the sitter has not answered. Over: past, or ended by either. */
  readonly state: 'asked' | 'accepted' | 'declined' | 'over';
}

/** Reminders one member may have. */
export const MOST_REMINDERS = 60;
/** Hand-overs one member may have that are not over. */
export const MOST_HAND_OVERS = 5;
/** Longest text of a reminder, letters. */
export const MOST_REMINDER_LETTERS = 120;

/** The part of a `Keep` about reminders; like all of it bound to one member. */
export interface ReminderKeep {
  /** The member's IANA time zone, once they said it. */
  readonly zone: () => string | undefined;
  readonly setZone: (zone: string) => void;

  /** Own reminders in the order they were made, those that are over too. */
  readonly reminders: () => readonly Reminder[];
  /** @throws Problem when there are `MOST_REMINDERS` already. */
  readonly addReminder: (plan: Plan, progress: Progress) => Reminder;
  /** All or nothing. */
  readonly addReminders: (made: readonly (readonly [Plan, Progress])[]) => readonly Reminder[];
  /** Own reminders only; undefined where there is none of this id. */
  readonly changeReminder: (id: number, plan: Plan, progress: Progress) => Reminder | undefined;
  readonly removeReminder: (id: number) => boolean;
  /** A reminder of one's own, or one handed over to this member and accepted, at this moment. */
  readonly reminder: (id: number) => { readonly reminder: Reminder; readonly mine: boolean } | undefined;
  /** Sets how far it has got (and the anchor, which "after I last did it" moves): own, or handed over and accepted. */
  readonly moveReminder: (id: number, anchor: string, progress: Progress) => Reminder | undefined;

  /** Those this member asked for and those that name this member as the sitter, newest first. */
  readonly handOvers: () => readonly HandOver[];
  /** @throws Problem when there are `MOST_HAND_OVERS` already, or when the sitter is the member. */
  readonly addHandOver: (made: NewHandOver) => HandOver;
  /** Only the sitter can; undefined for everyone else, and once it was answered or is over. */
  readonly answerHandOver: (id: number, accept: boolean) => HandOver | undefined;
  /** The owner or the sitter ends it. */
  readonly endHandOver: (id: number) => boolean;

  /** Sentences the member has not seen yet (why a reminder was not delivered); taking them removes them. */
  readonly takeNotices: () => readonly string[];
}
