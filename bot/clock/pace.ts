import type { Clock } from './clock.ts';

/** Resolves when it is the caller's turn. */
export type Turn = () => Promise<void>;

const secondMs = 1000;
/** Timers may run this much early. */
const earlyMs = 1;
/** Turns that come late are made up for by at most this much of the usual gap. */
const leastGap = 0.8;

/**
 * Turns in the order they were asked for, at most `perSecond` in any span of a second, evenly spread. The clock must be
 * one that nobody sets.
 */
export function createPace(clock: Clock, perSecond: number): Turn {
  const gapMs = (leastGap * secondMs) / perSecond;
  /** When the last turns were taken, at most `perSecond`, the oldest first. */
  const taken: number[] = [];
  let free = Promise.resolve();
  const rest = (): Promise<void> => {
    const nowMs = clock.nowMs();
    taken.push(nowMs);
    const [oldest = nowMs] = taken.length < perSecond ? [-Infinity] : taken.splice(0, 1);
    const waitMs = Math.max(gapMs, oldest + secondMs + earlyMs - nowMs);
    return new Promise((resolve) => void clock.after(waitMs, resolve));
  };
  return () => {
    const turn = free;
    free = turn.then(rest);
    return turn;
  };
}
