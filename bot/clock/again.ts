import type { Posted } from './post.ts';

const minuteMs = 60_000;
const longestMs = 60 * minuteMs;

/** When to try again after so many attempts before this one: 1, 2, 4 minutes on, at most an hour, or when told to. */
export function againMs(
  nowMs: number,
  attempts: number,
  { afterMs = 0 }: Posted & { kind: 'later' },
): number {
  return nowMs + Math.max(afterMs, Math.min(longestMs, minuteMs * 2 ** attempts));
}
