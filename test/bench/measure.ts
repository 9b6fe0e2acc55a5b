import { performance } from 'node:perf_hooks';

export interface Timing {
  readonly p50: number;
  readonly p99: number;
  readonly most: number;
}

/** Sorted quantiles of measured values. */
export function quantiles(values: readonly number[]): Timing {
  const sorted = [...values].sort((a, b) => a - b);
  const at = (q: number): number =>
    sorted[Math.min(sorted.length - 1, Math.floor(q * sorted.length))] ?? Number.NaN;
  return { p50: at(0.5), p99: at(0.99), most: sorted.at(-1) ?? Number.NaN };
}

/** Milliseconds of single runs of `work`, after runs that are not counted. */
export function timed(work: () => unknown, runs = 500, warmUp = 100): Timing {
  for (let i = 0; i < warmUp; i++) work();
  const values: number[] = [];
  for (let i = 0; i < runs; i++) {
    const start = performance.now();
    work();
    values.push(performance.now() - start);
  }
  return quantiles(values);
}
