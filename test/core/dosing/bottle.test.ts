import { describe, expect, it } from 'vitest';
import { bottleFor, riseOfBottle } from '../../../core/dosing/bottle.ts';
import { Problem } from '../../../core/problem.ts';

/** Plain proportion, by hand: 1 mL lifts 50 L by 0.1 dKH, so 2 dKH in 128.7 L take 20 x 2.574 mL. */
describe('a bottle that says what it raises', () => {
  const strength = { doseL: 0.001, perL: 50, raises: 0.1 };

  it('by the rise, and back', () => {
    expect(bottleFor(strength, 2, 128.7)).toBeCloseTo(0.05148, 9);
    expect(riseOfBottle(strength, 0.05148, 128.7)).toBeCloseTo(2, 9);
  });

  it.each([{ doseL: 0 }, { perL: 0 }, { raises: 0 }])('has no strength with %o', (part) => {
    expect(() => bottleFor({ ...strength, ...part }, 1, 100)).toThrow(Problem);
  });
});
