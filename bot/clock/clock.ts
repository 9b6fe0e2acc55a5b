/** Time as the loop sees it; a test has one of its own. */
export interface Clock {
  readonly nowMs: () => number;
  /** Runs `work` once, `delayMs` from now; the result calls it off. Never longer than one tick. */
  readonly after: (delayMs: number, work: () => void) => () => void;
}

export const systemClock: Clock = {
  nowMs: Date.now,
  after: (delayMs, work) => {
    const timer = setTimeout(work, delayMs);
    return () => clearTimeout(timer);
  },
};

/** Time that nobody sets: only spans of it mean something. */
export const steadyClock: Clock = { nowMs: () => performance.now(), after: systemClock.after };
