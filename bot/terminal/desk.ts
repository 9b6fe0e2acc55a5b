import type { Answer } from '../../commands/answer.ts';
import type { Talk } from '../../commands/ask/talk.ts';
import type { Asking, Command } from '../../commands/command.ts';
import type { Keep } from '../../commands/keep.ts';
import type { Reminder } from '../../commands/reminder.ts';
import type { Reader } from '../../core/language/reading.ts';
import type { Offer } from './offer.ts';
import type { Outbox } from './output-files.ts';
import type { Question } from './question.ts';

/** What the room needs to answer a line. */
export interface Desk extends Outbox {
  readonly commands: readonly Command[];
  readonly ask: (text: string, asking: Asking) => Answer;
  readonly reader: Reader;
  readonly nowMs: () => number;
  /** IANA zone of this machine. */
  readonly zone: string;
  /** What the person at this machine keeps. */
  readonly keep: Keep;
  /** What was asked here before. */
  readonly talk: () => Talk;
  /** What was just shown as due. */
  readonly due: () => readonly Reminder[];
}

/** What the room goes on from. */
export interface Standing {
  /** What a number typed next runs: those of the last answer that had some. */
  readonly offers: readonly Offer[];
  /** They are of the last answer itself. */
  readonly isFresh?: boolean;
  /** The words of offers that answer what was just asked. */
  readonly choices?: readonly string[];
  /** The form being filled in. */
  readonly question?: Question;
  /** The last answer and the page of it that was shown. */
  readonly shown?: { readonly answer: Answer; readonly at: number };
}

/** What is shown, where the room stands then, and whether the person leaves. */
export interface Reply extends Standing {
  readonly text: string;
  readonly leave: boolean;
}
