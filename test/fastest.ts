/** Milliseconds of the fastest of some runs: what it takes where nothing else keeps the machine busy. */
export function fastestMs(run: () => unknown, runs = 6): number {
  return Math.min(
    ...Array.from({ length: runs }, () => {
      const from = performance.now();
      run();
      return performance.now() - from;
    }),
  );
}
