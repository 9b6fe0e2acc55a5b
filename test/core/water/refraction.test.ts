import * as fc from 'fast-check';
import { describe, it } from 'vitest';
import { Problem } from '../../../core/problem.ts';
import { correctRefractometer, refractiveIndex } from '../../../core/water/refraction.ts';
import { salinityFromSpecificGravity } from '../../../core/water/specific-gravity.ts';
import { expect } from './expect.ts';

describe('refractive index [Quan & Fry 1995, Appl. Opt. 34:3477-3480; values computed from the equation]', () => {
  it.each([
    { s: 0, tempC: 20, n: 1.333004 },
    { s: 10, tempC: 20, n: 1.334833 },
    { s: 20, tempC: 20, n: 1.336662 },
    { s: 30, tempC: 20, n: 1.338491 },
    { s: 33, tempC: 20, n: 1.33904 },
    { s: 35, tempC: 20, n: 1.339406 },
    { s: 0, tempC: 25, n: 1.332514 },
    { s: 10, tempC: 25, n: 1.334327 },
    { s: 20, tempC: 25, n: 1.336139 },
    { s: 30, tempC: 25, n: 1.337952 },
    { s: 33, tempC: 25, n: 1.338495 },
    { s: 35, tempC: 25, n: 1.338858 },
  ])('S $s at $tempC is $n', ({ s, tempC, n }) => {
    expect(refractiveIndex(s, tempC)).toBeNear(n, 1e-6);
  });

  it('of pure water at 20 deg C is the handbook 1.33299 within the stated 3e-5 (handbook value from memory)', () => {
    expect(refractiveIndex(0, 20)).toBeNear(1.33299, 3e-5);
  });

  it.each([
    [36, 25, 589],
    [35, 31, 589],
    [35, 25, 399],
  ])('refuses S %s at %s, %s nm', (s, tempC, nm) => {
    expect(() => refractiveIndex(s, tempC, nm)).toThrow(Problem);
  });
});

describe('refractometer zeroed on fresh water', () => {
  const check = { scale: 'specific gravity', standardReading: 1.028, standardTrue: 1.0264 } as const;

  it('standard shows 1.028 for 1.0264: a tank at 1.026 is 1.0245, S 32.5 (worked by hand; EOS-80 25/25)', () => {
    const { corrected, errorAtStandard, slope } = correctRefractometer(1.026, check);
    expect(corrected).toBeNear(1.0245, 5e-5);
    expect(errorAtStandard).toBeNear(0.0016, 1e-12);
    expect(slope).toBeNear(0.0264 / 0.028, 1e-12);
    expect(salinityFromSpecificGravity(corrected, '25/25')).toBeNear(32.5, 0.05);
  });

  it('is right at the standard and at zero, on both scales', () => {
    expect(correctRefractometer(1.028, check).corrected).toBeNear(1.0264, 1e-12);
    expect(correctRefractometer(1, check).corrected).toBe(1);
    const ppt = { scale: 'ppt', standardReading: 37, standardTrue: 35 } as const;
    expect(correctRefractometer(37, ppt).corrected).toBeNear(35, 1e-12);
    expect(correctRefractometer(34, ppt).corrected).toBeNear((34 * 35) / 37, 1e-12);
  });

  it('leaves a true instrument alone', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 40, noNaN: true }), (reading) => {
        const { corrected } = correctRefractometer(reading, {
          scale: 'ppt',
          standardReading: 35,
          standardTrue: 35,
        });
        expect(corrected).toBeNear(reading, 1e-12);
      }),
    );
  });

  it.each([
    [1.026, { ...check, standardReading: 1.01 }],
    [1.026, { ...check, standardReading: 0.99 }],
    [1.026, { ...check, standardReading: 1 }],
    [1.026, { ...check, standardReading: Number.NaN }],
    [35, check],
    [0.99, check],
  ])('refuses a reading of %s with %o', (reading, standard) => {
    expect(() => correctRefractometer(reading, standard)).toThrow(Problem);
  });
});
