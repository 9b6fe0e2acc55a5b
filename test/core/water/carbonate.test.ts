import * as fc from 'fast-check';
import { describe, it } from 'vitest';
import { Problem } from '../../../core/problem.ts';
import {
  afterAddition,
  alkMeqLFromUmolKg,
  alkUmolKgFromMeqL,
  fromAlkalinityAndDic,
  fromAlkalinityAndPco2,
  fromAlkalinityAndPh,
  fromDicAndPh,
} from '../../../core/water/carbonate.ts';
import { convertPh, ph } from '../../../core/water/ph-scale.ts';
import { additions, balanced, fromAlkAndPh } from './carbonate-table.ts';
import { expect, outcome } from './expect.ts';

const standard = { practicalSalinity: 35, tempC: 25 };

describe('alkalinity and pH [PyCO2SYS 1.8.3.4]', () => {
  it.each(fromAlkAndPh)('S $s at $t, alkalinity $alk, pH total $ph', (row) => {
    const water = { practicalSalinity: row.s, tempC: row.t };
    const state = fromAlkalinityAndPh(row.alk, ph('total', row.ph), water);
    expect(state.dicUmolKg).toBeNear(row.dic, 0.5, 'DIC');
    expect(state.pco2Uatm).toBeNear(row.pco2, 1e-3 * row.pco2, 'pCO2');
    expect(state.co2UmolKg).toBeNear(row.co2, 1e-3 * row.co2, 'CO2');
    expect(state.hco3UmolKg).toBeNear(row.hco3, 1e-3 * row.hco3, 'HCO3');
    expect(state.co3UmolKg).toBeNear(row.co3, 1e-3 * row.co3, 'CO3');
    expect(state.boh4UmolKg).toBeNear(row.boh4, 1e-3 * row.boh4, 'B(OH)4');
    expect(state.omegaAragonite).toBeNear(row.omegaAr, 1e-3 * row.omegaAr, 'aragonite');
    expect(state.omegaCalcite).toBeNear(row.omegaCa, 1e-3 * row.omegaCa, 'calcite');
    expect(fromAlkalinityAndDic(row.alk, row.dic, water).phTotal).toBeNear(row.ph, 1e-3, 'pH from DIC');
    expect(fromAlkalinityAndPco2(row.alk, row.pco2, water).phTotal).toBeNear(row.ph, 1e-3, 'pH from pCO2');
    expect(fromDicAndPh(row.dic, ph('total', row.ph), water).alkUmolKg).toBeNear(row.alk, 0.5, 'alkalinity');
  });

  it('a published worked example [seacarb manual, carb() example 4; 2e-4, since its constants are older]', () => {
    const state = fromAlkalinityAndPh(2340, ph('total', 8.2), standard);
    expect(state.co2UmolKg).toBeNear(7.308171, 2e-4 * 7.308171, 'CO2');
    expect(state.hco3UmolKg).toBeNear(1646.857, 2e-4 * 1646.857, 'HCO3');
    expect(state.co3UmolKg).toBeNear(282.2957, 2e-4 * 282.2957, 'CO3');
    expect(state.dicUmolKg).toBeNear(1936.461, 2e-4 * 1936.461, 'DIC');
    expect(state.pco2Uatm).toBeNear(258.2164, 2e-4 * 258.2164, 'pCO2');
  });

  it('takes an NBS reading for what it is', () => {
    const nbs = fromAlkalinityAndPh(2300, ph('nbs', 8.23698), standard);
    expect(nbs.phTotal).toBeNear(8.1, 1e-3);
    const total = fromAlkalinityAndPh(2300, ph('total', 8.23698), standard);
    expect(nbs.pco2Uatm - total.pco2Uatm).toBeGreaterThan(90);
  });
});

describe('alkalinity and pCO2 [PyCO2SYS 1.8.3.4]', () => {
  it.each(balanced)('S $s at $t, alkalinity $alk under $pco2 uatm', (row) => {
    const water = { practicalSalinity: row.s, tempC: row.t };
    const state = fromAlkalinityAndPco2(row.alk, row.pco2, water);
    expect(state.phTotal).toBeNear(row.ph, 1e-3, 'pH total');
    expect(convertPh(ph('total', state.phTotal), 'nbs', water).value).toBeNear(row.phNbs, 1e-3, 'pH NBS');
    expect(state.dicUmolKg).toBeNear(row.dic, 0.5, 'DIC');
    expect(state.omegaAragonite).toBeNear(row.omegaAr, 1e-3 * row.omegaAr, 'aragonite');
  });
});

describe('additions before gas exchange [PyCO2SYS 1.8.3.4]', () => {
  const before = fromAlkalinityAndPh(2500, ph('total', 8.1), standard);

  it.each(additions)('$added: alkalinity $alk, DIC $dic', (row) => {
    const after = afterAddition(before, row.alk, row.dic);
    expect(after.phTotal).toBeNear(row.ph, 1e-3, 'pH');
    expect(after.pco2Uatm).toBeNear(row.pco2, 1e-3 * row.pco2, 'pCO2');
    expect(after.omegaAragonite).toBeNear(row.omegaAr, 1e-3 * row.omegaAr, 'aragonite');
  });
});

describe('round trips', () => {
  const water = fc.record({
    practicalSalinity: fc.double({ min: 19, max: 42, noNaN: true }),
    tempC: fc.double({ min: 5, max: 35, noNaN: true }),
  });
  const alk = fc.double({ min: 1000, max: 8000, noNaN: true });
  const phTotal = fc.double({ min: 6, max: 8.8, noNaN: true });

  it('alkalinity + pH -> DIC -> pH and -> alkalinity', () => {
    fc.assert(
      fc.property(alk, phTotal, water, (given, value, here) => {
        const state = fromAlkalinityAndPh(given, ph('total', value), here);
        expect(fromAlkalinityAndDic(given, state.dicUmolKg, here).phTotal).toBeNear(value, 1e-9);
        expect(fromDicAndPh(state.dicUmolKg, ph('total', value), here).alkUmolKg).toBeNear(given, 1e-6);
      }),
    );
  });

  it('pCO2 -> pH -> pCO2', () => {
    fc.assert(
      fc.property(alk, fc.double({ min: 50, max: 20_000, noNaN: true }), water, (given, pco2, here) => {
        const value = fromAlkalinityAndPco2(given, pco2, here).phTotal;
        expect(fromAlkalinityAndPh(given, ph('total', value), here).pco2Uatm).toBeNear(pco2, 1e-8 * pco2);
      }),
    );
  });

  it('meq/L -> umol/kg -> meq/L; 2.5 meq/L is 2442.98 at S 35, 25 deg C [EOS-80: 1023.3412 kg/m3]', () => {
    expect(alkUmolKgFromMeqL(2.5, standard)).toBeNear(2.5e6 / 1023.3412, 1e-3);
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 15, noNaN: true }), water, (meqL, here) => {
        expect(alkMeqLFromUmolKg(alkUmolKgFromMeqL(meqL, here), here)).toBeNear(meqL, 1e-12);
      }),
    );
  });

  it('every answer is a number or a Problem, whatever is asked', () => {
    const any = fc.double();
    const wild = fc.record({
      practicalSalinity: fc.double({ min: 10, max: 50 }),
      tempC: fc.double({ min: 0, max: 40 }),
    });
    const solvers = [
      (a: number, b: number, here: typeof standard) => fromAlkalinityAndPh(a, ph('nbs', b), here),
      (a: number, b: number, here: typeof standard) => fromDicAndPh(a, ph('nbs', b), here),
      fromAlkalinityAndDic,
      fromAlkalinityAndPco2,
    ];
    const first = fc.oneof(any, fc.double({ min: -100, max: 25_000 }));
    const second = fc.oneof(any, fc.double({ min: 4, max: 12 }), fc.double({ min: -100, max: 250_000 }));
    fc.assert(
      fc.property(fc.constantFrom(...solvers), first, second, wild, (solve, a, b, here) => {
        const state = outcome(() => solve(a, b, here));
        const { water: _, ...numbers } = state instanceof Problem ? { water: here } : state;
        expect(Object.values(numbers).every(Number.isFinite)).toBe(true);
      }),
      { numRuns: 2000 },
    );
  });
});

describe('what cannot be', () => {
  it.each([
    ['so high a pH with so little alkalinity', () => fromAlkalinityAndPh(100, ph('total', 9.5), standard)],
    ['far more alkalinity than DIC can hold below pH 11', () => fromAlkalinityAndDic(20_000, 1000, standard)],
    [
      'acid past all alkalinity',
      () => afterAddition(fromAlkalinityAndPh(500, ph('total', 8), standard), -500, 0),
    ],
    ['alkalinity in dKH', () => fromAlkalinityAndPh(8.3, ph('total', 8), standard)],
    ['no CO2 at all', () => fromAlkalinityAndPco2(2300, 0, standard)],
    ['brackish water', () => fromAlkalinityAndPh(2300, ph('total', 8), { practicalSalinity: 10, tempC: 25 })],
  ])('%s is a Problem', (_, solve) => {
    expect(solve).toThrow(Problem);
  });
});
