import { describe, it } from 'vitest';
import { Problem } from '../../../core/problem.ts';
import { carbonateConstants, ionicStrength } from '../../../core/water/carbonate-constants.ts';
import { henryK0 } from '../../../core/water/co2-gas.ts';
import { seawaterTotals } from '../../../core/water/seawater-totals.ts';
import { expect } from './expect.ts';

const standard = { practicalSalinity: 35, tempC: 25 };
const constants = { ...carbonateConstants(standard), k0: henryK0(standard) };

describe('published check values at S 35, 25 deg C', () => {
  it.each([
    { name: 'k0', log: Math.log, value: -3.5617, tolerance: 5e-5, source: 'Dickson et al. 2007' },
    {
      name: 'k1',
      log: Math.log10,
      value: -5.8472,
      tolerance: 5e-5,
      source: 'Dickson et al. 2007, Lueker 2000',
    },
    {
      name: 'k2',
      log: Math.log10,
      value: -8.966,
      tolerance: 5e-5,
      source: 'Dickson et al. 2007, Lueker 2000',
    },
    { name: 'kb', log: Math.log, value: -19.7964, tolerance: 5e-5, source: 'Dickson et al. 2007' },
    { name: 'kw', log: Math.log, value: -30.434, tolerance: 5e-4, source: 'Dickson et al. 2007' },
    { name: 'ks', log: Math.log, value: -2.3, tolerance: 5e-3, source: 'Dickson et al. 2007' },
    {
      name: 'kf',
      log: Math.log,
      value: -6.09,
      tolerance: 5e-3,
      source: 'Dickson et al. 2007, Perez & Fraga 1987',
    },
    {
      name: 'kspAragonite',
      log: Math.log10,
      value: -6.1883,
      tolerance: 5e-5,
      source: 'Zeebe & Wolf-Gladrow 2001',
    },
    {
      name: 'kspCalcite',
      log: Math.log10,
      value: -6.3693,
      tolerance: 5e-5,
      source: 'Zeebe & Wolf-Gladrow 2001',
    },
  ] as const)('$name is $value [$source]', ({ name, log, value, tolerance }) => {
    expect(log(constants[name])).toBeNear(value, tolerance);
  });
});

/**
 * Computed with PyCO2SYS 1.8.3.4, printed to 1e-6. Its KW carries a computed shift between pH scales: ln KW runs from
 * -30.434 to -30.449 over the codes, so pKW is held to 0.015 / ln 10.
 */
describe('other waters', () => {
  it.each([
    {
      s: 35,
      t: 25,
      lnK0: -3.561652,
      pK1: 5.847153,
      pK2: 8.965951,
      pKB: 8.597468,
      pKW: 13.220416,
      pKspAr: 6.188307,
      pKspCa: 6.369333,
      calcium: 10284.569701,
    },
    {
      s: 35,
      t: 20,
      lnK0: -3.429367,
      pK1: 5.891361,
      pK2: 9.046547,
      pKB: 8.656148,
      pKW: 13.418386,
      pKspAr: 6.179389,
      pKspCa: 6.366528,
      calcium: 10284.569701,
    },
    {
      s: 35,
      t: 30,
      lnK0: -3.682049,
      pK1: 5.80708,
      pK2: 8.887138,
      pKB: 8.540023,
      pKW: 13.031055,
      pKspAr: 6.199508,
      pKspCa: 6.373535,
      calcium: 10284.569701,
    },
    {
      s: 33,
      t: 24,
      lnK0: -3.525678,
      pK1: 5.863098,
      pK2: 9.002286,
      pKB: 8.62067,
      pKW: 13.274799,
      pKspAr: 6.217103,
      pKspCa: 6.401123,
      calcium: 9696.880004,
    },
    {
      s: 30,
      t: 25,
      lnK0: -3.535645,
      pK1: 5.867488,
      pK2: 9.018536,
      pKB: 8.62807,
      pKW: 13.261287,
      pKspAr: 6.267143,
      pKspCa: 6.453505,
      calcium: 8815.345458,
    },
    {
      s: 38,
      t: 28,
      lnK0: -3.650471,
      pK1: 5.813193,
      pK2: 8.889596,
      pKB: 8.546475,
      pKW: 13.083154,
      pKspAr: 6.148879,
      pKspCa: 6.324213,
      calcium: 11166.104247,
    },
  ])('S $s at $t [PyCO2SYS 1.8.3.4]', (row) => {
    const water = { practicalSalinity: row.s, tempC: row.t };
    const k = carbonateConstants(water);
    expect(Math.log(henryK0(water))).toBeNear(row.lnK0, 1e-6, 'ln K0');
    expect(-Math.log10(k.k1)).toBeNear(row.pK1, 1e-6, 'pK1');
    expect(-Math.log10(k.k2)).toBeNear(row.pK2, 1e-6, 'pK2');
    expect(-Math.log10(k.kb)).toBeNear(row.pKB, 1e-6, 'pKB');
    expect(-Math.log10(k.kspAragonite)).toBeNear(row.pKspAr, 1e-6, 'pKsp aragonite');
    expect(-Math.log10(k.kspCalcite)).toBeNear(row.pKspCa, 1e-6, 'pKsp calcite');
    expect(-Math.log10(k.kw)).toBeNear(row.pKW, 0.0065, 'pKW');
    expect(seawaterTotals(row.s).calcium * 1e6).toBeNear(row.calcium, 1e-5, 'calcium');
  });

  it.each([
    { practicalSalinity: 18.9, tempC: 25 },
    { practicalSalinity: 42.1, tempC: 25 },
    { practicalSalinity: 35, tempC: 4.9 },
    { practicalSalinity: 35, tempC: 35.1 },
    { practicalSalinity: Number.NaN, tempC: 25 },
  ])('refuses %o', (water) => {
    expect(() => carbonateConstants(water)).toThrow(Problem);
  });
});

describe('totals at S 35', () => {
  it.each([
    { name: 'borate', umolKg: 415.758, tolerance: 1e-3, source: 'Uppstrom 1974 through Dickson et al. 2007' },
    { name: 'sulfate', umolKg: 28_235.43, tolerance: 1e-2, source: 'Dickson et al. 2007' },
    { name: 'fluoride', umolKg: 68.326, tolerance: 1e-3, source: 'Dickson et al. 2007' },
    {
      name: 'calcium',
      umolKg: 10_284.57,
      tolerance: 1e-2,
      source: 'Riley & Tongudai 1967 as coded in PyCO2SYS',
    },
  ] as const)('$name is $umolKg umol/kg [$source]', ({ name, umolKg, tolerance }) => {
    expect(seawaterTotals(35)[name] * 1e6).toBeNear(umolKg, tolerance);
  });

  it('ionic strength is 0.7228 mol/kg (worked by hand: 19.924 x 35 / (1000 - 1.005 x 35), Dickson et al. 2007)', () => {
    expect(ionicStrength(35)).toBeNear(0.7228, 5e-5);
  });
});
