import type { State } from './state.ts';

/** Waits until `find` gives something, looking after every change; rejects when the bot does nothing. */
export function until<T>(state: State, find: () => T | undefined, what: string): Promise<T> {
  return new Promise((resolve, reject) => {
    const look = (): void => {
      const found = find();
      if (found === undefined) return;
      stop();
      resolve(found);
    };
    const timer = setTimeout(() => {
      stop();
      reject(new Error(`The bot did not ${what} within ${state.waitMs} ms`));
    }, state.waitMs);
    const stop = (): void => {
      clearTimeout(timer);
      state.changes.off('change', look);
    };
    state.changes.on('change', look);
    look();
  });
}
