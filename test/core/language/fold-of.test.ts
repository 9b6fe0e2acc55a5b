import * as fc from 'fast-check';
import { expect, it } from 'vitest';
import { foldOf } from '../../../core/language/fold-of.ts';

it('a batch is left out with the same group whatever other batches there are', () => {
  expect(['a', 'b', 'c', 'd'].map((batch) => foldOf(batch, 3))).toEqual([1, 2, 0, 1]);
  fc.assert(
    fc.property(fc.string(), fc.integer({ min: 1, max: 9 }), (batch, folds) => {
      const fold = foldOf(batch, folds);
      return Number.isInteger(fold) && fold >= 0 && fold < folds;
    }),
  );
});
