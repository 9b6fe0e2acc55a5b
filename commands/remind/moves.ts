import { anchorAfter } from '../../core/schedule/repeat.ts';
import type { Pause, Plan, Progress, Reminder } from '../reminder.ts';
import {
  anchorMs,
  following,
  isSingle,
  occurrenceAfter,
  occurrenceUpTo,
  started,
  stillAhead,
  throughPause,
} from './progress.ts';
import { dueOf } from './wake.ts';

/** A reminder after something the member did: the anchor, which "after I last did it" moves, and how far it has got. */
export interface Moved {
  readonly anchor: string;
  readonly progress: Progress;
}

/** The occurrence a member means who does not say which. */
export interface Meant {
  readonly dueMs: number;
  /** Whether its time has come. */
  readonly past: boolean;
}

/**
 * The last occurrence as long as it is not done and nearer than the next one; else the next. Undefined where there is
 * none left to do.
 */
export function meant(reminder: Reminder, nowMs: number): Meant | undefined {
  const { lastDoneMs = -Infinity, againMs } = reminder;
  const nextMs = stillAhead(dueOf(reminder), nowMs);
  const lastMs = againMs !== undefined && againMs <= nowMs ? againMs : occurrenceUpTo(reminder, nowMs);
  const open = lastMs !== undefined && lastDoneMs < lastMs ? lastMs : undefined;
  const ahead = againMs !== undefined && againMs > nowMs ? againMs : undefined;
  if (open !== undefined && ahead !== undefined) return { dueMs: open, past: true };
  if (open !== undefined && (nextMs === undefined || nowMs - open <= nextMs - nowMs)) {
    return { dueMs: open, past: true };
  }
  return nextMs === undefined ? undefined : { dueMs: nextMs, past: false };
}

/** Whether the occurrence of `dueMs` was done already, or one that came after it. */
export function isDone({ lastDoneMs }: Reminder, dueMs: number): boolean {
  return lastDoneMs !== undefined && lastDoneMs >= dueMs;
}

/** Done at `doneMs`: all that was due until now is settled, and `early` the one still to come as well. */
export function done(reminder: Reminder, early: number | undefined, doneMs: number, nowMs: number): Moved {
  const lastDoneMs = Math.max(doneMs, reminder.lastDoneMs ?? -Infinity);
  return passed({ ...reminder, lastDoneMs }, early, nowMs, lastDoneMs);
}

/** Passed over without being done. With "after I last did it" the days are counted from today. */
export function skipped(reminder: Reminder, early: number | undefined, nowMs: number): Moved {
  return passed(reminder, early, nowMs, nowMs);
}

function passed(reminder: Reminder, early: number | undefined, nowMs: number, countedMs: number): Moved {
  const { anchor, zone, rule, pause, lastDoneMs, trouble } = reminder;
  const sinceMs = Math.max(nowMs, early ?? nowMs);
  const kept = { pause, lastDoneMs, trouble };
  if (rule.every !== 'after') {
    const nextMs = trouble === undefined ? following(reminder, sinceMs) : undefined;
    return { anchor, progress: throughPause(reminder, { ...kept, nextMs }) };
  }
  const moved = { ...reminder, anchor: anchorAfter(anchor, zone, rule.days, countedMs) };
  const nextMs = trouble === undefined ? started(moved, nowMs).nextMs : undefined;
  return { anchor: moved.anchor, progress: throughPause(moved, { ...kept, nextMs }) };
}

/** Once more at `untilMs`; `early` is the occurrence put off before its time. */
export function later(
  reminder: Reminder,
  early: number | undefined,
  untilMs: number,
  nowMs: number,
): Progress {
  const { pause, lastDoneMs, trouble } = reminder;
  const nextMs = following(reminder, Math.max(nowMs, early ?? nowMs));
  return throughPause(reminder, { nextMs, againMs: untilMs, pause, lastDoneMs, trouble });
}

/** Nothing is sent in the span; what is sent once in it is put off to its end. */
export function paused(reminder: Reminder, pause: Pause): Progress {
  return throughPause(reminder, { ...progressOf(reminder), pause });
}

/**
 * Goes on now, without the pause and without what stopped it. Of a repeat the next occurrence comes; what comes only
 * once and is not done comes at its time, or at once where that has passed.
 */
export function resumed(reminder: Reminder, nowMs: number): Progress {
  const { lastDoneMs, trouble, nextMs, againMs, pause } = reminder;
  if (!isSingle(reminder)) {
    const again = againMs === pause?.untilMs ? undefined : stillAhead(againMs, nowMs);
    return { nextMs: occurrenceAfter(reminder, nowMs), againMs: again, lastDoneMs };
  }
  const firstMs = anchorMs(reminder);
  const waits = nextMs !== undefined || againMs !== undefined || trouble !== undefined;
  if (!waits || isDone(reminder, firstMs)) return { lastDoneMs };
  return firstMs > nowMs ? { nextMs: firstMs, lastDoneMs } : { againMs: nowMs, lastDoneMs };
}

/** The plan of a reminder with other times begins anew; with another text only it goes on. */
export function changed(reminder: Reminder, plan: Plan, nowMs: number): Progress {
  const { pause, lastDoneMs } = reminder;
  const keepsTimes =
    plan.anchor === reminder.anchor && plan.zone === reminder.zone && plan.rule === reminder.rule;
  if (keepsTimes && reminder.trouble === undefined) return progressOf(reminder);
  if (keepsTimes) return throughPause(plan, { ...resumed(reminder, nowMs), pause });
  return throughPause(plan, { ...started(plan, nowMs), pause, lastDoneMs });
}

export function progressOf({ nextMs, againMs, pause, lastDoneMs, trouble }: Progress): Progress {
  return { nextMs, againMs, pause, lastDoneMs, trouble };
}
