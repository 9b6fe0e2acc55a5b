import * as fc from 'fast-check';
import { describe, it } from 'vitest';
import { Problem } from '../../../core/problem.ts';
import {
  mgKgFromMgL,
  mgLFromMgKg,
  practicalFromReferenceGKg,
  readingAtSalinity,
  referenceSalinityGKg,
  seawaterAlkMeqL,
  seawaterMgKg,
  seawaterMgL,
} from '../../../core/water/reference-seawater.ts';
import { expect } from './expect.ts';

describe('reference composition [Millero et al. 2008, Deep-Sea Res. I 55:50-72]', () => {
  it.each([
    { species: 'Na', mgKg: 10_781.454, mgL: 11_033.11 },
    { species: 'Mg', mgKg: 1283.717, mgL: 1313.68 },
    { species: 'Ca', mgKg: 412.085, mgL: 421.7 },
    { species: 'K', mgKg: 399.106, mgL: 408.42 },
    { species: 'Sr', mgKg: 7.947, mgL: 8.13 },
    { species: 'Cl', mgKg: 19_352.714, mgL: 19_804.43 },
    { species: 'SO4', mgKg: 2712.346, mgL: 2775.66 },
    { species: 'Br', mgKg: 67.285, mgL: 68.86 },
    { species: 'F', mgKg: 1.298, mgL: 1.33 },
  ] as const)('$species at S 35 is $mgKg mg/kg, $mgL mg/L at 25 deg C', ({ species, mgKg, mgL }) => {
    expect(seawaterMgKg(species, 35)).toBeNear(mgKg, 1e-3);
    expect(seawaterMgL(species, 35, 25)).toBeNear(mgL, 1e-2);
  });

  it('holds 4.4872 mg/kg of boron and 35.16504 g/kg of salt at S 35', () => {
    expect(seawaterMgKg('B', 35)).toBeNear(4.4872, 1e-4);
    expect(referenceSalinityGKg(35)).toBeNear(35.16504, 1e-9);
  });

  it('has an alkalinity of 6.612 dKH at S 35, 25 deg C', () => {
    expect(seawaterAlkMeqL(35, 25) * 2.80385).toBeNear(6.612, 1e-3);
  });

  it('is in proportion to salinity', () => {
    expect(seawaterMgKg('Mg', 30)).toBeNear((1283.717 * 30) / 35, 1e-3);
  });
});

describe('conversions', () => {
  const salinity = fc.double({ min: 2, max: 42, noNaN: true });
  const temp = fc.double({ min: 0, max: 40, noNaN: true });

  it('calcium 412.085 mg/kg is 421.70 mg/L, 2.3 % more [Millero et al. 2008 with EOS-80]', () => {
    expect(mgLFromMgKg(412.085, 35, 25)).toBeNear(421.7, 5e-3);
  });

  it('mg/kg and mg/L go there and back', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 30_000, noNaN: true }), salinity, temp, (mgL, s, t) => {
        expect(mgLFromMgKg(mgKgFromMgL(mgL, s, t), s, t)).toBeNear(mgL, 1e-9 * Math.max(1, mgL));
      }),
    );
  });

  it('practical and reference salinity go there and back', () => {
    fc.assert(
      fc.property(salinity, (s) => {
        expect(practicalFromReferenceGKg(referenceSalinityGKg(s))).toBeNear(s, 1e-9);
      }),
    );
  });

  it('natural water read at one salinity is natural water at any other', () => {
    fc.assert(
      fc.property(salinity, salinity, temp, (from, to, t) => {
        expect(readingAtSalinity(seawaterMgL('Ca', from, t), from, to, t)).toBeNear(
          seawaterMgL('Ca', to, t),
          1e-6,
        );
      }),
    );
  });

  it('calcium 385 at S 32 is no shortage: about 422 at S 35 [Millero et al. 2008 with EOS-80]', () => {
    expect(readingAtSalinity(384.7, 32, 35, 25)).toBeNear(421.7, 0.05);
  });

  it('refuses a salinity out of range', () => {
    expect(() => referenceSalinityGKg(43)).toThrow(Problem);
    expect(() => practicalFromReferenceGKg(-1)).toThrow(Problem);
    expect(() => seawaterMgL('Ca', 35, 60)).toThrow(Problem);
    expect(() => readingAtSalinity(400, 0, 35, 25)).toThrow(Problem);
  });
});
