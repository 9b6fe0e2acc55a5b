/** Gives `work` a signal that is aborted after `limitMs`, or with `outer`; settles then, even if the work does not. */
export async function within<T>(
  limitMs: number,
  outer: AbortSignal,
  work: (signal: AbortSignal) => Promise<T>,
): Promise<T> {
  const own = new AbortController();
  const abort = (): void => own.abort();
  const aborted = new Promise<never>((_, reject) =>
    own.signal.addEventListener('abort', () => reject(new Error('given up'))),
  );
  const timer = setTimeout(abort, limitMs);
  outer.addEventListener('abort', abort);
  if (outer.aborted) abort();
  try {
    return await Promise.race([work(own.signal), aborted]);
  } finally {
    clearTimeout(timer);
    outer.removeEventListener('abort', abort);
  }
}
