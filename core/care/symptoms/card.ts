import type { SourceCode } from '../../sources.ts';
import type { HurtId } from '../hurt/cards.ts';
import type { UrgentId } from '../urgent/cards.ts';
import type { GroupId } from './group.ts';
import type { Sign } from './sign.ts';

/**
 * One thing seen in a tank: what it may be, what to do first whatever it is, and when to ask. Common practice unless a
 * `published` line says more. Most likely causes stand first; answers and signs only change their order, for no cause
 * is ever certain from words.
 */
export interface SymptomCard {
  readonly group: GroupId;
  /** As it is offered: at most 60 letters. */
  readonly label: string;
  readonly causes: Readonly<Record<string, Cause>>;
  readonly questions: readonly Question[];
  /** First safe action, one sentence. */
  readonly first: string;
  readonly steps: readonly string[];
  readonly never: readonly string[];
  readonly stop: string;
  readonly published?: readonly string[];
  readonly sources: readonly SourceCode[];
  /** Part of the water in the change that `steps` speak of. */
  readonly change?: readonly [number, number];
  /** The emergency it can turn into. */
  readonly urgent?: UrgentId;
  /** How it can hurt a person. */
  readonly hurt?: HurtId;
}

export interface Cause {
  readonly name: string;
  readonly why: string;
  readonly signs?: readonly Sign[];
  /** Goes in place of the card's own first action where this cause stands first and something speaks for it. */
  readonly first?: string;
}

export interface Question {
  readonly ask: string;
  readonly choices: Readonly<Record<string, Choice>>;
}

/** One answer: what it makes likelier or less likely, and why, in words that can stand alone. */
export interface Choice {
  /** At most 60 letters. */
  readonly label: string;
  readonly up?: readonly string[];
  readonly down?: readonly string[];
  readonly because: string;
  /** Told in the message itself, these are this answer. */
  readonly signs?: readonly Sign[];
  /** Goes before the card's own first action. */
  readonly first?: string;
  /** Where the card's own first action would then be wrong. */
  readonly replaces?: true;
}

/** Questions of one card at most: with the group and the symptom four in all. */
export const MOST_QUESTIONS = 2;
