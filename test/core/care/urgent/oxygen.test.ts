import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { oxygenMgPerL, oxygenUmolPerKg } from '../../../../core/care/urgent/oxygen.ts';
import { Problem } from '../../../../core/problem.ts';

/**
 * Garcia & Gordon 1992, the combined fit, at 1 atm of moist air. umol/kg and mg/L were worked out apart from this code
 * and agree with the paper's own check, 274.61 umol/kg at S 35 and 10 deg C (check value from memory).
 */
const table = [
  { s: 35, tempC: 10, umolKg: 274.61 },
  { s: 30, tempC: 20, umolKg: 233.17, mgL: 7.617 },
  { s: 30, tempC: 22, umolKg: 224.93, mgL: 7.344 },
  { s: 30, tempC: 24, umolKg: 217.23, mgL: 7.089 },
  { s: 30, tempC: 25, umolKg: 213.56, mgL: 6.967 },
  { s: 30, tempC: 26, umolKg: 210.0, mgL: 6.849 },
  { s: 30, tempC: 28, umolKg: 203.2, mgL: 6.623 },
  { s: 30, tempC: 30, umolKg: 196.79, mgL: 6.41 },
  { s: 35, tempC: 20, umolKg: 225.54, mgL: 7.395 },
  { s: 35, tempC: 22, umolKg: 217.66, mgL: 7.134 },
  { s: 35, tempC: 24, umolKg: 210.3, mgL: 6.888 },
  { s: 35, tempC: 25, umolKg: 206.79, mgL: 6.771 },
  { s: 35, tempC: 26, umolKg: 203.38, mgL: 6.658 },
  { s: 35, tempC: 28, umolKg: 196.88, mgL: 6.441 },
  { s: 35, tempC: 30, umolKg: 190.74, mgL: 6.236 },
] as const;

describe('oxygen at saturation', () => {
  it.each(table)('S $s, $tempC °C', ({ s, tempC, umolKg, ...rest }) => {
    expect(Math.abs(oxygenUmolPerKg(s, tempC) - umolKg)).toBeLessThanOrEqual(0.01);
    if ('mgL' in rest) expect(Math.abs(oxygenMgPerL(s, tempC) - rest.mgL)).toBeLessThanOrEqual(0.001);
  });

  it('falls with warmth and with salt', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 41, noNaN: true }),
        fc.double({ min: 0, max: 39, noNaN: true }),
        (s, t) => {
          expect(oxygenMgPerL(s, t + 1)).toBeLessThan(oxygenMgPerL(s, t));
          expect(oxygenMgPerL(s + 1, t)).toBeLessThan(oxygenMgPerL(s, t));
        },
      ),
    );
  });

  it.each([
    [35, 41],
    [43, 25],
    [-1, 25],
  ])('refuses S %d, %d °C', (s, t) => expect(() => oxygenMgPerL(s, t)).toThrow(Problem));
});
