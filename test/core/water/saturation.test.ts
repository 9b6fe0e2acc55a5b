import { describe, it } from 'vitest';
import { Problem } from '../../../core/problem.ts';
import { seawaterMgL } from '../../../core/water/reference-seawater.ts';
import { calciumUmolKg, saturation } from '../../../core/water/saturation.ts';
import { fromAlkAndPh } from './carbonate-table.ts';
import { expect } from './expect.ts';

const standard = { practicalSalinity: 35, tempC: 25 };

describe('saturation state', () => {
  it.each(fromAlkAndPh)('S $s at $t, carbonate $co3 [PyCO2SYS 1.8.3.4]', (row) => {
    const state = saturation(row.co3, { practicalSalinity: row.s, tempC: row.t });
    expect(state.omegaAragonite).toBeNear(row.omegaAr, 1e-4 * row.omegaAr);
    expect(state.omegaCalcite).toBeNear(row.omegaCa, 1e-4 * row.omegaCa);
  });

  it('calcium 421.7 mg/L is 10282 umol/kg [Millero et al. 2008: 10.28208 mmol/kg]', () => {
    expect(calciumUmolKg(421.7, standard)).toBeNear(10_282.08, 0.3);
  });

  it('natural calcium measured gives what the salinity gives, within the 0.03 % between the two totals', () => {
    const measured = saturation(234.593, standard, seawaterMgL('Ca', 35, 25)).omegaAragonite;
    expect(measured).toBeNear(3.72228, 3e-4 * 3.72228);
  });

  it('is in proportion to calcium', () => {
    const low = saturation(200, standard, 380).omegaAragonite;
    expect(saturation(200, standard, 456).omegaAragonite / low).toBeNear(1.2, 1e-12);
    expect(saturation(200, standard, 0).omegaAragonite).toBe(0);
  });

  it('refuses what cannot be', () => {
    expect(() => saturation(-1, standard)).toThrow(Problem);
    expect(() => saturation(200, standard, 5000)).toThrow(Problem);
    expect(() => saturation(200, { practicalSalinity: 5, tempC: 25 })).toThrow(Problem);
  });
});
