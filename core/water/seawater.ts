import { inRange } from '../problem.ts';

/** Valid range of EOS-80 at one atmosphere [fm83]. */
export const eos80Range = { salinityMin: 0, salinityMax: 42, tempMinC: -2, tempMaxC: 40 } as const;

/**
 * Temperature on IPTS-68 (deg C) from ITS-90 (deg C): t68 = 1.00024 t90.
 *
 * EOS-80 and PSS-78 were fitted on IPTS-68; today's thermometers read ITS-90. Source: fm83 formulas, relation as in
 * teos10. Check: 25 -> 25.006. Doubt: none at aquarium temperatures (the difference is 0.006 K).
 */
export function t68FromT90(tempC: number): number {
  return 1.00024 * tempC;
}

/**
 * Density of seawater (kg/m3, equal to g/L) at one atmosphere, EOS-80. Salinity 0 is pure water.
 *
 * `practicalSalinity` 0 to 42; `tempC` -2 to 40 deg C on ITS-90. Source: fm83 (EOS-80, coefficients of mp81).
 * Check [fm83 p.19]: S 35, t68 25 -> 1023.34306; S 0, t68 25 -> 997.04796.
 * Doubt: TEOS-10 differs by up to 0.006 kg/m3 in the reef range; a salt mix whose ions are out of proportion by more.
 *
 * @throws Problem outside the range.
 */
export function densityKgM3(practicalSalinity: number, tempC: number): number {
  const s = inRange('salinity', practicalSalinity, eos80Range.salinityMin, eos80Range.salinityMax, '');
  const t = t68FromT90(inRange('temperature', tempC, eos80Range.tempMinC, eos80Range.tempMaxC, '°C'));
  const pureWater =
    999.842594 +
    t * (6.793952e-2 + t * (-9.09529e-3 + t * (1.001685e-4 + t * (-1.120083e-6 + t * 6.536332e-9))));
  const a = 0.824493 + t * (-4.0899e-3 + t * (7.6438e-5 + t * (-8.2467e-7 + t * 5.3875e-9)));
  const b = -5.72466e-3 + t * (1.0227e-4 - t * 1.6546e-6);
  return pureWater + s * (a + b * Math.sqrt(s) + 4.8314e-4 * s);
}
