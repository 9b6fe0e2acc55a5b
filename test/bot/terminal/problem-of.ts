import { Problem } from '../../../core/problem.ts';

/** The Problem `run` throws; fails when it throws none. */
export function problemOf(run: () => unknown): Problem {
  try {
    run();
  } catch (error) {
    if (error instanceof Problem) return error;
    throw error;
  }
  throw new Error('no Problem was thrown');
}
