import * as fc from 'fast-check';
import { describe, it } from 'vitest';
import { Problem } from '../../../core/problem.ts';
import {
  gravityPairs,
  type GravityPair,
  hydrometerReading,
  salinityFromHydrometer,
  salinityFromSpecificGravity,
  specificGravity,
} from '../../../core/water/specific-gravity.ts';
import { expect } from './expect.ts';
import { gravities, gravitiesTeos10, salinities } from './specific-gravity-table.ts';

const pairs = Object.keys(gravityPairs) as GravityPair[];

describe.each(pairs)('specific gravity %s', (pair) => {
  it.each(gravities)('of S $s [EOS-80, Fofonoff & Millard 1983]', (row) => {
    expect(specificGravity(row.s, pair)).toBeNear(row[pair], 1e-6);
  });

  it.each(gravitiesTeos10)('of S $s agrees with TEOS-10 [GSW-Python 3.6.16] to 4e-6', (row) => {
    expect(specificGravity(row.s, pair)).toBeNear(row[pair], 4.5e-6);
  });

  it.each(salinities)('$sg back to salinity [EOS-80, Fofonoff & Millard 1983]', (row) => {
    expect(salinityFromSpecificGravity(row.sg, pair)).toBeNear(row[pair], 1e-3);
  });

  it('goes from fresh to S 42 and back', () => {
    expect(specificGravity(0, pair)).toBe(1);
    fc.assert(
      fc.property(fc.double({ min: 0, max: 42, noNaN: true }), (s) => {
        expect(salinityFromSpecificGravity(specificGravity(s, pair), pair)).toBeNear(s, 1e-9);
      }),
    );
  });

  it.each([0.9999, 1.034, 35, Number.NaN])('refuses %s', (sg) => {
    expect(() => salinityFromSpecificGravity(sg, pair)).toThrow(Problem);
  });
});

describe('hydrometer in water of another temperature', () => {
  it.each(gravities)('60F/60F in S $s at 25 deg C, glass left out [EOS-80]', ({ s, warm60F }) => {
    expect(hydrometerReading(s, '60F/60F', 25, 0)).toBeNear(warm60F, 1e-6);
    expect(salinityFromHydrometer(warm60F, '60F/60F', 25, 0)).toBeNear(s, 1e-3);
  });

  it('adds about 0.0002 for the glass at 25 deg C (from memory)', () => {
    expect(hydrometerReading(35, '60F/60F', 25) - hydrometerReading(35, '60F/60F', 25, 0)).toBeNear(
      0.0002,
      5e-5,
    );
  });

  it('needs no correction at its own temperature', () => {
    expect(salinityFromHydrometer(1.0264, '25/25', 25)).toBeNear(35.036, 1e-3);
  });

  it('reads below 1.000 in warm fresh water', () => {
    expect(salinityFromHydrometer(hydrometerReading(0, '60F/60F', 27), '60F/60F', 27)).toBeNear(0, 1e-9);
    expect(hydrometerReading(0, '60F/60F', 27)).toBeLessThan(1);
  });

  it('goes there and back', () => {
    const temp = fc.double({ min: 10, max: 35, noNaN: true });
    fc.assert(
      fc.property(
        fc.constantFrom(...pairs),
        fc.double({ min: 0, max: 42, noNaN: true }),
        temp,
        (pair, s, t) => {
          expect(salinityFromHydrometer(hydrometerReading(s, pair, t), pair, t)).toBeNear(s, 1e-9);
        },
      ),
    );
  });
});
