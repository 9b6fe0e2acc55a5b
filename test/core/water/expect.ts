import { expect } from 'vitest';
import { Problem } from '../../../core/problem.ts';

export { expect };

declare module 'vitest' {
  interface Matchers<T> {
    /** Within `tolerance` of `expected`, both ends allowed (and 1e-9 of the tolerance for binary rounding). */
    toBeNear(expected: number, tolerance: number, what?: string): T;
  }
}

expect.extend({
  toBeNear(actual: number, expected: number, tolerance: number, what = 'value') {
    return {
      pass: Math.abs(actual - expected) <= tolerance * (1 + 1e-9),
      message: () => `${what}: ${actual} is not within ${tolerance} of ${expected}`,
    };
  },
});

/** What the action returns, or the Problem it throws; any other error goes on. */
export function outcome<T>(action: () => T): T | Problem {
  try {
    return action();
  } catch (error) {
    if (error instanceof Problem) return error;
    throw error;
  }
}
