import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  afterSaltTopOff,
  baggedMixGPerL,
  drySaltGPerL,
  drySaltToAddG,
  freshExcessFraction,
  freshWaterToAddKg,
  salinityOfBaggedMix,
  saltTopOffFraction,
} from '../../../core/change/salt.ts';
import { Problem } from '../../../core/problem.ts';
import { salinityFromSpecificGravity } from '../../../core/water/specific-gravity.ts';

const density = 'Fofonoff & Millard 1983 (EOS-80): 1023.343 kg/m3 at S 35, 25 degC';
const salt = 'Millero et al. 2008: 35.16504 g/kg at S 35';

const table = [
  {
    what: 'dry salt, 35 g/kg',
    got: () => drySaltGPerL(35).asPpt,
    expected: 35.817,
    tolerance: 0.001,
    source: density,
  },
  {
    what: 'dry salt, reference',
    got: () => drySaltGPerL(35).reference,
    expected: 35.986,
    tolerance: 0.001,
    source: `${density}; ${salt}`,
  },
  {
    what: 'salt for 100 kg from 33 to 35',
    got: () => drySaltToAddG(100, 33, 35),
    expected: 208.2668,
    tolerance: 1e-4,
    source: `m(SA2 - SA1)/(1000 - SA2); ${salt}`,
  },
  {
    what: 'fresh water for 100 kg from 36 to 35',
    got: () => freshWaterToAddKg(100, 36, 35),
    expected: 2.85714,
    tolerance: 1e-5,
    source: 'm(S1/S2 - 1) by hand',
  },
  {
    what: 'excess fresh water, 1.025 showing 1.024',
    got: () =>
      freshExcessFraction(
        salinityFromSpecificGravity(1.025, '25/25'),
        salinityFromSpecificGravity(1.024, '25/25'),
      ),
    expected: 0.0398,
    tolerance: 0.0002,
    source: 'EOS-80 25/25: 33.188 and 31.867, 1 - 31.867/33.188',
  },
  {
    what: 'four days of 1 % topped off with salt water',
    got: () => afterSaltTopOff(35, 35, 0.04),
    expected: 36.4,
    tolerance: 1e-12,
    source: 'mass balance by hand: 35 + 35 x 0.04',
  },
  {
    what: 'bagged mix, low',
    got: () => baggedMixGPerL(35).low,
    expected: 36,
    tolerance: 0,
    source: 'common practice',
  },
  {
    what: 'bagged mix, high',
    got: () => baggedMixGPerL(35).high,
    expected: 39,
    tolerance: 0,
    source: 'common practice',
  },
];

const salinity = fc.double({ min: 5, max: 41, noNaN: true });

describe('salt', () => {
  it.each(table)('$what -> $expected', ({ got, expected, tolerance }) => {
    expect(Math.abs(got() - expected)).toBeLessThanOrEqual(tolerance);
  });

  it('salt added and then the fresh water that undoes it: the salt fraction returns', () => {
    fc.assert(
      fc.property(salinity, fc.double({ min: 0.1, max: 1, noNaN: true }), (from, step) => {
        const to = from + step;
        const kg = 100 + drySaltToAddG(100, from, to) / 1000;
        const back = (kg * to) / (kg + freshWaterToAddKg(kg, to, from));
        expect(back).toBeCloseTo(from, 8);
      }),
    );
  });

  it('topping off by the share computed arrives at the goal', () => {
    fc.assert(
      fc.property(salinity, fc.double({ min: 0, max: 1, noNaN: true }), (from, step) => {
        const share = saltTopOffFraction(from, from + step, 35);
        expect(afterSaltTopOff(from, 35, share)).toBeCloseTo(from + step, 8);
      }),
    );
  });

  it('the mass of a bag and the salinity it makes are inverses', () => {
    fc.assert(
      fc.property(salinity, (s) => {
        const { low, high } = baggedMixGPerL(s);
        expect(salinityOfBaggedMix(low).high).toBeCloseTo(s, 8);
        expect(salinityOfBaggedMix(high).low).toBeCloseTo(s, 8);
      }),
    );
  });

  it('refuses to lower with salt, to raise with fresh water, and what is no seawater', () => {
    expect(() => drySaltToAddG(100, 35, 33)).toThrow(Problem);
    expect(() => freshWaterToAddKg(100, 33, 35)).toThrow(Problem);
    expect(() => drySaltGPerL(60)).toThrow(Problem);
    expect(() => afterSaltTopOff(35, 35, 0.9)).toThrow(Problem);
  });
});
