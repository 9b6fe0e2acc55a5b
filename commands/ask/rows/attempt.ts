import { Problem } from '../../../core/problem.ts';

/** What cannot be read is no reason to fail where the answer stands without it. */
export function attempt<T>(run: () => T): T | undefined {
  try {
    return run();
  } catch (error) {
    if (error instanceof Problem) return undefined;
    throw error;
  }
}
