import { describe, it } from 'vitest';
import { Problem } from '../../../core/problem.ts';
import { densityKgM3, t68FromT90 } from '../../../core/water/seawater.ts';
import { anomaly, published, reefRange } from './density-table.ts';
import { expect } from './expect.ts';

describe('density', () => {
  it.each(published)('S $s at t68 $t68 is $rho [$source]', ({ s, t68, rho }) => {
    expect(densityKgM3(s, t68 / 1.00024)).toBeNear(rho, 1e-5);
  });

  it.each(anomaly)('S $s at t68 $t68 is 1000 + $sigma [$source]', ({ s, t68, sigma }) => {
    expect(densityKgM3(s, t68 / 1.00024) - 1000).toBeNear(sigma, 1e-4);
  });

  it.each(reefRange)(
    'S $s at $tempC is $eos80 (EOS-80) and $teos10 (TEOS-10)',
    ({ s, tempC, eos80, teos10 }) => {
      expect(densityKgM3(s, tempC)).toBeNear(eos80, 1e-4);
      expect(densityKgM3(s, tempC)).toBeNear(teos10, 0.01);
    },
  );

  it.each([
    { tempC: 4, rho: 999.975 },
    { tempC: 15.5556, rho: 999.0154 },
    { tempC: 20, rho: 998.2053 },
    { tempC: 25, rho: 997.0464 },
  ])('pure water at $tempC is $rho [GSW-Python 3.6.16, EOS-80]', ({ tempC, rho }) => {
    expect(densityKgM3(0, tempC)).toBeNear(rho, 1e-4);
  });

  it('converts ITS-90 to IPTS-68 [TEOS-10 manual: t68 = 1.00024 t90]', () => {
    expect(t68FromT90(25)).toBeNear(25.006, 1e-9);
  });

  it.each([
    [-0.1, 25],
    [42.1, 25],
    [35, -2.1],
    [35, 40.1],
    [Number.NaN, 25],
    [35, Number.POSITIVE_INFINITY],
  ])('refuses S %s at %s', (s, tempC) => {
    expect(() => densityKgM3(s, tempC)).toThrow(Problem);
  });
});
