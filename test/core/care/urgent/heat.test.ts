import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { iceKg, warmWaterL } from '../../../../core/care/urgent/heat.ts';

/** Heat of fusion 334 kJ/kg, heat capacities 4.18 (fresh) and 3.99 (sea) kJ/(kg K): from memory. Density 1.0233 [fm83]. */
describe('closed bottles', () => {
  it.each([
    // 100 x 1.02334 x 3.99 = 408.3 kJ a degree.
    { litres: 100, byC: 1, toC: 27, kg: 408.3 / (334 + 4.18 * 27) },
    { litres: 340.7, byC: 2, toC: 28, kg: (3.407 * 2 * 408.3) / (334 + 4.18 * 28) },
  ])('ice: $litres L by $byC', ({ litres, byC, toC, kg }) =>
    expect(Math.abs(iceKg(litres, byC, toC) / kg - 1)).toBeLessThan(0.001),
  );

  it.each([
    { litres: 100, byC: 1, toC: 22, warmL: 5.427 },
    { litres: 250, byC: 1, toC: 24, warmL: 15.26 },
  ])('warm water: $litres L by $byC', ({ litres, byC, toC, warmL }) =>
    expect(Math.abs(warmWaterL(litres, byC, toC) / warmL - 1)).toBeLessThan(0.002),
  );

  it('gives back the heat that was asked for', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 10, max: 2000, noNaN: true }),
        fc.double({ min: 0.5, max: 5, noNaN: true }),
        (l, by) => {
          const gained = iceKg(l, by, 26) * (334 + 4.18 * 26);
          const given = warmWaterL(l, by, 26) * 4.18 * (40 - 26);
          expect(Math.abs(gained / given - 1)).toBeLessThan(1e-9);
        },
      ),
    );
  });
});
