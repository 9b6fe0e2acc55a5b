import { logFailure } from './log.ts';
import type { Logger } from './log.ts';
import type { Store } from './store/open.ts';

/** Much less than a day, so that a day is not missed; the store itself knows what is due. */
const oftenMs = 15 * 60 * 1000;

/** Has the store tidied and copied now and then, for as long as the process lives. It keeps no process alive. */
export function keepUp(
  store: Pick<Store, 'upkeep'>,
  nowMs: () => number,
  log: Logger,
  everyMs = oftenMs,
): { readonly stop: () => void } {
  const look = (): void => {
    store.upkeep(nowMs()).catch((error: unknown) => logFailure(log, error, 'no backup was made'));
  };
  look();
  const timer = setInterval(look, everyMs).unref();
  return { stop: () => clearInterval(timer) };
}
