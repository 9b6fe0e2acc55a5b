import { describe, it } from 'vitest';
import { Problem } from '../../../core/problem.ts';
import { fugacityFactor, pco2FromDryAirPpm } from '../../../core/water/co2-gas.ts';
import { expect } from './expect.ts';

const water = { practicalSalinity: 35, tempC: 25 };

describe('CO2 in the air', () => {
  it('fugacity is 0.99681 of pCO2 at 25 deg C [PyCO2SYS 1.8.3.4, Weiss 1974]', () => {
    expect(fugacityFactor(25)).toBeNear(0.99681, 5e-6);
  });

  it('420 ppm of dry air is 407.1 uatm over seawater, a factor of 0.96934 [PyCO2SYS 1.8.3.4]', () => {
    expect(pco2FromDryAirPpm(420, water)).toBeNear(407.1, 0.05);
    expect(pco2FromDryAirPpm(1000, water)).toBeNear(969.34, 0.01);
  });

  it.each([0, -400, 1e6, Number.NaN])('refuses %s ppm', (ppm) => {
    expect(() => pco2FromDryAirPpm(ppm, water)).toThrow(Problem);
  });
});
