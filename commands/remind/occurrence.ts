import { z } from 'zod';
import { Problem } from '../../core/problem.ts';
import { sayInstant } from '../../core/schedule/say.ts';
import { answer, type Answer, type Fact } from '../answer.ts';
import type { Keep } from '../keep.ts';
import type { Reminder } from '../reminder.ts';
import { isDone, meant } from './moves.ts';
import { named, timeFact } from './times.ts';
import { wakeOf } from './wake.ts';
import { say } from '../../core/wording/say.ts';

/** Which occurrence a button belongs to, in seconds since 1970. */
export const dueOption = z
  .int()
  .min(0)
  .max(7_258_118_400)
  .describe('Which of its times; the buttons fill this in')
  .optional();

/** The occurrence something is said of. */
export interface Occasion {
  readonly dueMs: number;
  /** Set where its time has not come: it is settled before it is sent. */
  readonly early: number | undefined;
}

/**
 * The occurrence of a button, or the one that is meant where none is named. A time to come in a button is not believed.
 *
 * @throws Problem where there is none left.
 */
export function occasionOf(reminder: Reminder, due: number | undefined, nowMs: number): Occasion {
  if (due !== undefined && due * 1000 <= nowMs) return { dueMs: due * 1000, early: undefined };
  const found = meant(reminder, nowMs);
  if (found !== undefined) return { dueMs: found.dueMs, early: found.past ? undefined : found.dueMs };
  if (reminder.lastDoneMs !== undefined) return { dueMs: reminder.lastDoneMs, early: undefined };
  throw new Problem(say('remind.nothingReminderOpen', { named: named(reminder) }), {
    field: 'reminder',
    hint: say('remind.overGiveNewTime'),
  });
}

/**
 * As `occasionOf` for what is done: soon after it was done it is that one again, and not the next one done early.
 */
export function doneOccasion(reminder: Reminder, due: number | undefined, nowMs: number): Occasion {
  const occasion = occasionOf(reminder, due, nowMs);
  const { lastDoneMs } = reminder;
  if (lastDoneMs === undefined || occasion.early === undefined) return occasion;
  const isSoon = nowMs - lastDoneMs < occasion.early - nowMs;
  return isSoon ? { dueMs: lastDoneMs, early: undefined } : occasion;
}

/** The answer to a second "done", "later" or "skip" of an occurrence that was done; undefined where it was not. */
export function doneBefore(reminder: Reminder, { dueMs }: Occasion): Answer | undefined {
  const { lastDoneMs, zone } = reminder;
  if (lastDoneMs === undefined || !isDone(reminder, dueMs)) return undefined;
  return answer({
    headline: `That was done already: ${reminder.text}, ${sayInstant(lastDoneMs, zone)}. I count it once.`,
    facts: nextFacts(reminder),
    instants: [{ atMs: lastDoneMs, zone }],
  });
}

/** Writes how far a reminder has got. @throws Problem where it went away meanwhile. */
export function moveTo(
  keep: Keep,
  reminder: Reminder,
  anchor: string,
  progress: Parameters<Keep['moveReminder']>[2],
) {
  const after = keep.moveReminder(reminder.id, anchor, progress);
  if (after === undefined) throw new Problem(say('remind.reminderGone'), { field: 'reminder' });
  return after;
}

/** When it comes next, or why it does not. */
export function nextFacts(reminder: Reminder): readonly Fact[] {
  const { zone, trouble, pause, rule } = reminder;
  if (trouble !== undefined) {
    return [{ label: 'Next', value: `none: it is stopped. ${trouble} Start it again with /remind resume.` }];
  }
  const wakeMs = wakeOf(reminder);
  if (wakeMs !== undefined) return [timeFact('Next', wakeMs, zone)];
  if (pause !== undefined) return [{ label: 'Next', value: 'none while it is paused' }];
  const waits = rule.every === 'after' ? 'when you say it is done' : 'none, that was the last';
  return [{ label: 'Next', value: waits }];
}
