import * as fc from 'fast-check';
import { describe, it } from 'vitest';
import { risingRoot } from '../../../core/water/root.ts';
import { expect } from './expect.ts';

describe('risingRoot', () => {
  it('finds where a rising function crosses zero, the ends included', () => {
    fc.assert(
      fc.property(fc.double({ min: -5, max: 5, noNaN: true }), (at) => {
        expect(risingRoot((x) => x ** 3 - at ** 3 + (x - at), -5, 5) ?? Number.NaN).toBeNear(at, 1e-12);
      }),
    );
  });

  it('says so when there is none', () => {
    expect(risingRoot((x) => x + 10, -5, 5)).toBeUndefined();
    expect(risingRoot(() => Number.NaN, -5, 5)).toBeUndefined();
  });
});
