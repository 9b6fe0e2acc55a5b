import * as fc from 'fast-check';
import { describe, it } from 'vitest';
import { Problem } from '../../../core/problem.ts';
import {
  conductivityMScm,
  ratioFromSalinity,
  salinityFromConductivity,
  salinityFromRatio,
} from '../../../core/water/conductivity.ts';
import {
  conductivityOfSalinity,
  ratioOfSalinity,
  salinityOfConductivity,
  salinityOfRatio,
} from './conductivity-table.ts';
import { expect, outcome } from './expect.ts';

describe('practical salinity scale', () => {
  it.each([
    { ratio: 1, t68: 15, dbar: 0, s: 35, tolerance: 1e-6, source: 'fm83 p.9' },
    { ratio: 1.2, t68: 20, dbar: 2000, s: 37.245628, tolerance: 1e-6, source: 'fm83 p.9' },
    { ratio: 0.65, t68: 5, dbar: 1500, s: 27.995347, tolerance: 1e-6, source: 'fm83 p.9' },
    // R is printed to 1e-6, which is 1e-5 in S
    { ratio: 1.888091, t68: 40, dbar: 10_000, s: 40, tolerance: 1e-5, source: 'fm83 p.11' },
  ])('R $ratio at t68 $t68 and $dbar dbar is S $s [$source]', ({ ratio, t68, dbar, s, tolerance }) => {
    expect(salinityFromRatio(ratio, t68, dbar)).toBeNear(s, tolerance);
  });

  it.each(salinityOfRatio)('R $ratio at t68 $t68 is S $s [$source]', ({ ratio, t68, s }) => {
    expect(salinityFromRatio(ratio, t68)).toBeNear(s, 1e-4);
  });

  it.each(ratioOfSalinity)('S $s at t68 $t68 is R $ratio [$source]', ({ s, t68, ratio }) => {
    expect(ratioFromSalinity(s, t68)).toBeNear(ratio, 1e-6);
  });
});

describe('conductivity', () => {
  it.each(conductivityOfSalinity)(
    'S $s at $tempC is $mScm mS/cm [GSW-Python 3.6.16]',
    ({ s, tempC, mScm }) => {
      expect(conductivityMScm(s, tempC)).toBeNear(mScm, 1e-4);
    },
  );

  it.each(salinityOfConductivity)(
    '$mScm mS/cm at $tempC is S $s [GSW-Python 3.6.16]',
    ({ mScm, tempC, s }) => {
      expect(salinityFromConductivity(mScm, tempC)).toBeNear(s, 1e-5);
    },
  );

  it('keeps 42.914 mS/cm at 15 deg C on IPTS-68 [Culkin & Smith 1980], not on ITS-90', () => {
    expect(salinityFromConductivity(42.914, 15 / 1.00024)).toBeNear(35, 1e-6);
    expect(salinityFromConductivity(42.914, 15)).toBeLessThan(34.998);
  });

  it('goes there and back', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 2, max: 42, noNaN: true }),
        fc.double({ min: -2, max: 35, noNaN: true }),
        (s, t) => {
          expect(salinityFromConductivity(conductivityMScm(s, t), t)).toBeNear(s, 1e-9);
        },
      ),
    );
  });

  it.each([
    [0, 25],
    [5300, 25],
    [Number.NaN, 25],
    [53, 36],
  ])('refuses %s mS/cm at %s', (mScm, tempC) => {
    expect(() => salinityFromConductivity(mScm, tempC)).toThrow(Problem);
  });

  it('names limits that are accepted', () => {
    const problem = outcome(() => salinityFromConductivity(530, 25));
    const [low = 0, high = 0] =
      problem instanceof Problem ? problem.limit!.split(' to ').map((part) => Number.parseFloat(part)) : [];
    expect(salinityFromConductivity(low, 25)).toBeNear(2, 0.06);
    expect(salinityFromConductivity(high, 25)).toBeNear(42, 0.08);
  });
});
