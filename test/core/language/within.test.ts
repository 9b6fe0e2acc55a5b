import { describe, expect, it } from 'vitest';
import { isWithin } from '../../../core/language/within.ts';

describe('a number near another', () => {
  it.each([
    [2, 4, 8, true],
    [2, 8, 4, true],
    [2, 4, 8.1, false],
    [2, 0, 0, false],
    [2, -4, -5, false],
  ])('within %d times: %d and %d', (factor, one, other, isNear) =>
    expect(isWithin(factor, one, other)).toBe(isNear),
  );
});
