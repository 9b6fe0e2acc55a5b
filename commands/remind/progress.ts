import { latestUpTo, nextAfter, occurrence } from '../../core/schedule/repeat.ts';
import { instantOf } from '../../core/schedule/zone.ts';
import type { Plan, Progress, Reminder } from '../reminder.ts';
import { isPaused } from './wake.ts';

/** How far a plan has got that begins now: its first occurrence later than `nowMs`. */
export function started(plan: Plan, nowMs: number): Progress {
  return { nextMs: occurrenceAfter(plan, nowMs) };
}

/**
 * Progress once the occurrence of `dueMs` is settled: sent, or passed over. The next is the first later than both
 * `dueMs` and `nowMs`, so that after days of downtime there is one late message and not one each. There is none where
 * `times` has run out, and with "after I last did it" none until it is done. A pause that has ended is forgotten.
 */
export function settled(reminder: Reminder, dueMs: number, nowMs: number): Progress {
  const sinceMs = Math.max(dueMs, nowMs);
  const { againMs, lastDoneMs, pause, trouble } = reminder;
  return throughPause(reminder, {
    nextMs: following(reminder, sinceMs),
    againMs: stillAhead(againMs, sinceMs),
    pause: (pause?.untilMs ?? Infinity) <= nowMs ? undefined : pause,
    lastDoneMs,
    trouble,
  });
}

/** What comes next once all up to `sinceMs` is settled; of a plan that comes once, itself as long as it is to be sent. */
export function following(reminder: Reminder, sinceMs: number): number | undefined {
  const ahead = stillAhead(reminder.nextMs, sinceMs);
  return ahead ?? (isSingle(reminder) ? undefined : occurrenceAfter(reminder, sinceMs));
}

/** The first occurrence later than `afterMs`, as long as `times` lasts. */
export function occurrenceAfter(plan: Plan, afterMs: number): number | undefined {
  const { anchor, zone, rule, times = Infinity } = plan;
  const next = nextAfter(anchor, zone, rule, afterMs);
  return next === undefined || next.index >= times ? undefined : next.atMs;
}

/** "2 of 4" for the occurrence of an instant of a plan that ends; undefined for one without an end. */
export function placeWords(plan: Plan, atMs: number): string | undefined {
  const { anchor, zone, rule, times } = plan;
  const index = latestUpTo(anchor, zone, rule, atMs)?.index;
  if (times === undefined || index === undefined) return undefined;
  return `${Math.min(index + 1, times)} of ${times}`;
}

/** The last occurrence at or before `atMs`; with `times` never one beyond the last. */
export function occurrenceUpTo(plan: Plan, atMs: number): number | undefined {
  const { anchor, zone, rule, times = Infinity } = plan;
  const last = latestUpTo(anchor, zone, rule, atMs);
  if (last === undefined || last.index < times) return last?.atMs;
  return occurrence(anchor, zone, rule, times - 1);
}

/**
 * What falls into a pause with an end: a repeat goes on with its first occurrence after it, what comes only once is put
 * off to the end. In a pause without an end everything stays where it is, and waits.
 */
export function throughPause(plan: Plan, progress: Progress): Progress {
  const { pause, nextMs, againMs } = progress;
  const untilMs = pause?.untilMs;
  if (pause === undefined || untilMs === undefined) return progress;
  const falls = (atMs: number | undefined): boolean => atMs !== undefined && isPaused(pause, atMs);
  const again = falls(againMs) ? untilMs : againMs;
  if (!falls(nextMs)) return { ...progress, againMs: again };
  if (isSingle(plan)) return { ...progress, nextMs: undefined, againMs: untilMs };
  return { ...progress, nextMs: occurrenceAfter(plan, untilMs - 1), againMs: again };
}

/** Whether nothing follows by itself once it was sent. */
export function isSingle({ rule }: Plan): boolean {
  return rule.every === 'once' || rule.every === 'after';
}

/** The instant a plan that comes once is meant for. */
export function anchorMs({ anchor, zone }: Plan): number {
  return instantOf(anchor, zone);
}

export function stillAhead(atMs: number | undefined, sinceMs: number): number | undefined {
  return atMs !== undefined && atMs > sinceMs ? atMs : undefined;
}
