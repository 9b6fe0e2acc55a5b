import { setMaxListeners } from 'node:events';
import { logFailure } from '../log.ts';
import type { Logger } from '../log.ts';
import { deliver, type DeliveryParts } from './deliver.ts';
import { inLanes } from './lanes.ts';
import { tell } from './tell.ts';

export interface LoopParts extends DeliveryParts {
  readonly log: Logger;
}

/** Sends what is due, until it is stopped. */
export interface Loop {
  /** Can be called again: it starts once. */
  readonly start: () => void;
  /** Finishes what is under way, within about 5 seconds, and gives back the rest. */
  readonly stop: () => Promise<void>;
}

/** Nothing is looked for less often, and no timer is longer. */
const tickMs = 15_000;
const mostAtOnce = 50;
const lanes = 20;
/** Far longer than a batch takes. After a crash what was claimed is due again when it is over. */
const leaseMs = 120_000;
const drainMs = 4500;

/** The loop, not yet started. It never throws: what fails is logged, and due again when its lease is over. */
export function openLoop(parts: LoopParts): Loop {
  const { due, clock, log } = parts;
  const hurry = new AbortController();
  setMaxListeners(0, hurry.signal);
  const told = new Set<string>();
  let state: 'new' | 'started' | 'stopped' = 'new';
  let underWay = Promise.resolve();
  let callOff: (() => void) | undefined;
  const isStopped = (): boolean => state === 'stopped';
  const next = (delayMs: number): void => {
    if (!isStopped()) callOff = clock.after(delayMs, () => void (underWay = tick()));
  };
  const logged = (work: () => Promise<void>, ids: Readonly<Record<string, number>>): Promise<void> =>
    work().catch((error: unknown) => void logFailure(log, error, 'not delivered', ids));

  const reminders = async (): Promise<boolean> => {
    const claimed = due.claim(clock.nowMs(), mostAtOnce, leaseMs);
    const left = await inLanes(claimed, lanes, isStopped, (each) =>
      logged(() => deliver(parts, each, hurry.signal), { reminder: each.reminder.id }),
    );
    for (const { reminder, dueMs } of left) due.putOff(reminder.id, dueMs, clock.nowMs());
    return claimed.length === mostAtOnce;
  };
  const handOvers = async (): Promise<boolean> => {
    if (isStopped()) return false;
    const claimed = due.claimHandOvers(clock.nowMs(), mostAtOnce, leaseMs);
    const left = await inLanes(claimed, lanes, isStopped, (each) =>
      logged(() => tell(parts, each, told, hurry.signal), { handOver: each.handOver.id }),
    );
    for (const { handOver } of left) due.putOffHandOver(handOver.id, clock.nowMs());
    return claimed.length === mostAtOnce;
  };
  const tick = async (): Promise<void> => {
    let more = false;
    await logged(async () => {
      more = await reminders();
      more = (await handOvers()) || more;
    }, {});
    next(more ? 0 : tickMs);
  };
  return {
    start: () => {
      if (state !== 'new') return;
      state = 'started';
      next(0);
    },
    stop: async () => {
      state = 'stopped';
      callOff?.();
      const noLonger = clock.after(drainMs, () => hurry.abort());
      await underWay;
      noLonger();
    },
  };
}
