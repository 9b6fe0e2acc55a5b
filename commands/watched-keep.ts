import type { Keep } from './keep.ts';

/** What of a `Keep` only looks. All the rest of it writes, what will be added to it too. */
export const keepReads = [
  'units',
  'locale',
  'tanks',
  'tankInUse',
  'lastEntry',
  'readings',
  'latest',
  'additions',
  'exportAll',
  'zone',
  'reminders',
  'reminder',
  'handOvers',
  'glass',
  'corals',
  'lightPoints',
  'viewers',
  'shownToMe',
  'shownTank',
  'watches',
  'told',
] as const satisfies readonly (keyof Keep)[];

const reads: ReadonlySet<PropertyKey> = new Set(keepReads);

/** The same keep, which tells of each write before it is done: where `onWrite` throws, nothing is written. */
export function watchedKeep(keep: Keep, onWrite: () => void): Keep {
  return new Proxy(keep, {
    get: (target, name): unknown => {
      const found: unknown = Reflect.get(target, name);
      if (reads.has(name) || typeof found !== 'function') return found;
      return (...given: readonly unknown[]): unknown => {
        onWrite();
        return Reflect.apply(found, target, given);
      };
    },
  });
}
