import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { limitsOf } from '../../../core/water/limits.ts';
import { parameterIds } from '../../../core/water/parameter.ts';
import { unusualGoal } from '../../../core/water/towards.ts';

describe('a goal outside the usual range (ranges: common practice, no source)', () => {
  it.each([
    ['alkalinity', 12, 8, 'high', false],
    ['alkalinity', 6, 4, 'low', true],
    ['alkalinity', 6, 8, 'low', false],
    ['alkalinity', 6, 14, 'low', false],
    ['calcium', 500, undefined, 'high', false],
    ['nitrate', 40, 80, 'high', true],
    ['nitrate', 0, 50, 'low', false],
    ['salinity', 28, 35, 'low', false],
  ] as const)('%s to %d from %s: %s, nearer %s', (id, goal, now, side, isNearer) => {
    expect(unusualGoal(id, goal, now)).toMatchObject({ side, isNearer });
  });

  it('allows for the error of a salinity instrument', () => {
    expect(unusualGoal('salinity', 32.2)).toBeUndefined();
    expect(unusualGoal('salinity', 31.9)).toBeDefined();
  });

  it('offers a level that is itself usual, and lets every usual level pass', () => {
    const passes = fc.check(
      fc.property(
        fc.constantFrom(...parameterIds),
        fc.double({ min: 0, max: 2000, noNaN: true }),
        (id, goal) => {
          const unusual = unusualGoal(id, goal);
          const [low, high] = limitsOf(id).usual;
          if (goal >= low && goal <= high) expect(unusual).toBeUndefined();
          if (unusual !== undefined) expect(unusualGoal(id, unusual.instead)).toBeUndefined();
        },
      ),
      { numRuns: 2000 },
    );
    expect(passes.failed, JSON.stringify(passes.counterexample)).toBe(false);
  });
});
