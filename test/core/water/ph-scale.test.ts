import * as fc from 'fast-check';
import { describe, it } from 'vitest';
import { Problem } from '../../../core/problem.ts';
import { convertPh, ph, type PhScale } from '../../../core/water/ph-scale.ts';
import { fromAlkAndPh } from './carbonate-table.ts';
import { expect } from './expect.ts';

const water = { practicalSalinity: 35, tempC: 25 };
const scales: readonly PhScale[] = ['free', 'total', 'seawater', 'nbs'];

describe('pH scales', () => {
  it.each([
    { scale: 'free', above: 0.108 },
    { scale: 'seawater', above: -0.01 },
    { scale: 'nbs', above: 0.137 },
    { scale: 'total', above: 0 },
  ] as const)('$scale is total + $above at S 35, 25 deg C [PyCO2SYS 1.8.3.4]', ({ scale, above }) => {
    expect(convertPh(ph('total', 8.1), scale, water).value).toBeNear(8.1 + above, 5e-4);
  });

  it.each(fromAlkAndPh)('S $s at $t, total $ph [PyCO2SYS 1.8.3.4]', (row) => {
    const here = { practicalSalinity: row.s, tempC: row.t };
    const total = ph('total', row.ph);
    expect(convertPh(total, 'free', here).value).toBeNear(row.phFree, 1e-5);
    expect(convertPh(total, 'seawater', here).value).toBeNear(row.phSeawater, 1e-5);
    expect(convertPh(total, 'nbs', here).value).toBeNear(row.phNbs, 1e-5);
  });

  it('goes from any scale to any other and back', () => {
    const scale = fc.constantFrom(...scales);
    const value = fc.double({ min: 5, max: 11, noNaN: true });
    const salinity = fc.double({ min: 19, max: 42, noNaN: true });
    const temp = fc.double({ min: 5, max: 35, noNaN: true });
    fc.assert(
      fc.property(scale, scale, value, salinity, temp, (from, to, given, practicalSalinity, tempC) => {
        const here = { practicalSalinity, tempC };
        const there = convertPh(ph(from, given), to, here);
        expect(there.scale).toBe(to);
        expect(convertPh(there, from, here).value).toBeNear(given, 1e-12);
      }),
    );
  });

  it.each([4.9, 11.1, 82, Number.NaN])('refuses a pH of %s', (value) => {
    expect(() => ph('nbs', value)).toThrow(Problem);
  });
});
