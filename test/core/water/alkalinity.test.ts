import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { calciumWithAlkalinity, dkhFromMeqL, meqLFromDkh } from '../../../core/water/alkalinity.ts';

describe('alkalinity units', () => {
  it('1 meq/L is 2.80385 dKH (German degree = 10 mg CaO per litre, IUPAC 2021 weights)', () => {
    expect(dkhFromMeqL(1)).toBeCloseTo(2.80385, 9);
    expect(meqLFromDkh(1)).toBeCloseTo(0.35665246, 8);
  });

  it('go there and back', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 60, noNaN: true }), (dkh) => {
        expect(dkhFromMeqL(meqLFromDkh(dkh))).toBeCloseTo(dkh, 9);
      }),
    );
  });

  it('calcification takes 20.039 mg Ca per meq and 7.14696 per dKH (CaCO3, IUPAC 2021)', () => {
    expect(calciumWithAlkalinity(1)).toBeCloseTo(20.039, 9);
    expect(calciumWithAlkalinity(meqLFromDkh(1))).toBeCloseTo(7.1469586, 6);
  });
});
