/** The latest of something for a while, in memory alone. */
export interface ShortMemory<T> {
  readonly get: (key: string) => T | undefined;
  readonly put: (key: string, value: T) => void;
  readonly drop: (key: string) => void;
  /** Drops all of which this holds. */
  readonly dropWhere: (holds: (key: string, value: T) => boolean) => void;
}

/** Keeps at most `most` values, the latest. What is too old goes with the next use by anyone. */
export function openShortMemory<T>(nowMs: () => number, most: number, keptMs: number): ShortMemory<T> {
  const kept = new Map<string, { readonly value: T; readonly atMs: number }>();
  /** They stand in the order they came. */
  const forgetOld = (): void => {
    for (const [key, { atMs }] of kept) {
      if (nowMs() - atMs <= keptMs) return;
      kept.delete(key);
    }
  };
  return {
    get: (key) => {
      forgetOld();
      return kept.get(key)?.value;
    },
    put: (key, value) => {
      forgetOld();
      kept.delete(key);
      kept.set(key, { value, atMs: nowMs() });
      const [oldest] = kept.keys();
      if (kept.size > most && oldest !== undefined) kept.delete(oldest);
    },
    drop: (key) => void kept.delete(key),
    dropWhere: (holds) => {
      for (const [key, { value }] of kept) if (holds(key, value)) kept.delete(key);
    },
  };
}
