import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addedL, freshTempC, mixedTempC, warmFraction } from '../../../core/change/warmth.ts';
import { Problem } from '../../../core/problem.ts';

// Heat balance m1 c T1 + m2 c T2 = (m1 + m2) c T (calorimetry, any textbook of physics), worked by hand.
describe('two waters poured together', () => {
  it.each([
    // 80 L at 25 and 20 L at 18: (2000 + 360) / 100.
    { nowC: 25, freshC: 18, fraction: 0.2, expected: 23.6 },
    { nowC: 20, freshC: 30, fraction: 0.5, expected: 25 },
    // 20 L at 18 and 4 L at 60: (360 + 240) / 24.
    { nowC: 18, freshC: 60, fraction: 4 / 24, expected: 25 },
  ])('$nowC and $freshC come out at $expected °C', ({ expected, ...mixing }) =>
    expect(mixedTempC(mixing)).toBeCloseTo(expected, 9),
  );

  it('finds the temperature or the part that was left out', () => {
    expect(freshTempC(24, 25, 0.2)).toBeCloseTo(29, 9);
    expect(warmFraction(18, 25, 60)).toBeCloseTo(1 / 6, 9);
    expect(addedL(20, 1 / 6)).toBeCloseTo(4, 9);
    expect(warmFraction(25, 27, 26)).toBeUndefined();
    expect(warmFraction(25, 24, 26)).toBeUndefined();
  });

  it('asks for no ice and no steam', () => expect(() => freshTempC(20, 30, 0.05)).toThrow(Problem));

  it('goes round: what is worked out brings it there', () => {
    const tempC = fc.double({ min: 5, max: 35, noNaN: true });
    fc.assert(
      fc.property(
        tempC,
        tempC,
        fc.double({ min: 0.05, max: 0.95, noNaN: true }),
        (nowC, freshC, fraction) => {
          const outC = mixedTempC({ nowC, freshC, fraction });
          expect(freshTempC(nowC, outC, fraction)).toBeCloseTo(freshC, 6);
          if (Math.abs(freshC - nowC) > 0.01)
            expect(warmFraction(nowC, outC, freshC)).toBeCloseTo(fraction, 6);
        },
      ),
    );
  });
});
