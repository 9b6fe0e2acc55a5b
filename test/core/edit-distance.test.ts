import * as fc from 'fast-check';
import { expect, it } from 'vitest';
import { editDistance } from '../../core/edit-distance.ts';

// "kitten" and "sitting" is the textbook example (3); a swap of neighbours counts one (Damerau 1964).
it.each([
  ['kitten', 'sitting', 3],
  ['hamer', 'hammer', 1],
  ['spwan', 'spawn', 1],
  ['ca', 'abc', 3],
  ['', 'abc', 3],
  ['same', 'same', 0],
])('%s to %s is %i', (a, b, distance) => expect(editDistance(a, b)).toBe(distance));

it('is the same both ways and never more than the longer word', () => {
  fc.assert(
    fc.property(fc.string({ maxLength: 10 }), fc.string({ maxLength: 10 }), (a, b) => {
      expect(editDistance(a, b)).toBe(editDistance(b, a));
      expect(editDistance(a, b)).toBeLessThanOrEqual(Math.max(a.length, b.length));
    }),
  );
});
