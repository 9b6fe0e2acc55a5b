import { time } from './limits.ts';
import type { LoggedRequest } from './state.ts';

/** Whether a request counts against the global limit: callbacks and webhooks do not. */
export function isLimited({ path }: Pick<LoggedRequest, 'path'>): boolean {
  return !/^\/(interactions|webhooks)\//.test(path);
}

/** The most requests that count in any span of one second, wherever it begins. */
export function mostInASecond(requests: readonly Pick<LoggedRequest, 'path' | 'atMs'>[]): number {
  const times = requests
    .filter(isLimited)
    .map(({ atMs }) => atMs)
    .sort((a, b) => a - b);
  let most = 0;
  let first = 0;
  for (const [index, atMs] of times.entries()) {
    while ((times[first] ?? atMs) <= atMs - time.globalWindowMs) first += 1;
    most = Math.max(most, index - first + 1);
  }
  return most;
}
