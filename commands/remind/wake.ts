import type { Pause, Progress } from '../reminder.ts';

/** The instant that is due next: the occurrence, or the later time the member chose. */
export function dueOf({ nextMs, againMs }: Progress): number | undefined {
  return againMs === undefined || (nextMs !== undefined && nextMs < againMs) ? nextMs : againMs;
}

export function isPaused({ fromMs, untilMs = Infinity }: Pause, atMs: number): boolean {
  return fromMs <= atMs && atMs < untilMs;
}

/** When the member is told next: undefined where it is over, stopped, waits to be done, or is paused without an end. */
export function wakeOf(progress: Progress): number | undefined {
  const { pause, trouble } = progress;
  const dueMs = dueOf(progress);
  if (dueMs === undefined || trouble !== undefined) return undefined;
  return pause !== undefined && isPaused(pause, dueMs) ? pause.untilMs : dueMs;
}
