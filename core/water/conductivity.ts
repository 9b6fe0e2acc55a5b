import { inRange } from '../problem.ts';
import { readingInRange } from './reading-range.ts';
import { risingRoot } from './root.ts';
import { t68FromT90 } from './seawater.ts';

/** Valid range of the practical salinity scale [fm83]. */
export const pss78Range = { salinityMin: 2, salinityMax: 42, tempMinC: -2, tempMaxC: 35 } as const;

/**
 * Conductivity (mS/cm) of seawater of S 35 at 15 deg C **on IPTS-68** (14.9964 on ITS-90) and one atmosphere [cs80].
 * Trap: at 15 deg C on ITS-90 it is 42.9175; feeding 42.914 there gives S 34.9968.
 */
const standardMScm = 42.914;

/** rt: conductivity of S 35 at `t68C` over that at 15 deg C [fm83]. */
function ratioOfTemperature(t68C: number): number {
  const t = t68C;
  return 0.6766097 + t * (2.00564e-2 + t * (1.104259e-4 + t * (-6.9698e-7 + t * 1.0031e-9)));
}

/** Rp: the effect of pressure (dbar) on the ratio R [fm83]; 1 at the surface. */
function ratioOfPressure(ratioR: number, t68C: number, p: number): number {
  const rise = p * (2.07e-5 + p * (-6.37e-10 + p * 3.989e-15));
  return 1 + rise / (1 + t68C * (3.426e-2 + t68C * 4.464e-4) + (0.4215 - 3.107e-3 * t68C) * ratioR);
}

/** S from Rt, the ratio to S 35 at the same temperature and pressure [fm83]. */
function salinityFromRt(ratioRt: number, t68C: number): number {
  const x = Math.sqrt(ratioRt);
  const atFifteen = 0.008 + x * (-0.1692 + x * (25.3851 + x * (14.0941 + x * (-7.0261 + x * 2.7081))));
  const shift = 0.0005 + x * (-0.0056 + x * (-0.0066 + x * (-0.0375 + x * (0.0636 - x * 0.0144))));
  return atFifteen + ((t68C - 15) / (1 + 0.0162 * (t68C - 15))) * shift;
}

/**
 * Practical salinity from the conductivity ratio R = C(S,t,p) / C(35,15,0), PSS-78.
 *
 * `ratioR` 0 to 3; `t68C` -2 to 40 deg C on IPTS-68; `pressureDbar` 0 (the surface) to 10000. Source: fm83 (PSS-78).
 * Check [fm83 p.9]: R 1.2, t68 20, p 2000 -> 37.245628. Doubt: the scale is defined for S 2 to 42 and -2 to 35 deg C;
 * the published tables run further, so this function does too. Use `salinityFromConductivity` for a member's reading.
 *
 * @throws Problem outside the ranges above.
 */
export function salinityFromRatio(ratioR: number, t68C: number, pressureDbar = 0): number {
  const r = inRange('conductivity ratio', ratioR, 0, 3, '');
  const t = inRange('temperature', t68C, -2, 40, '°C');
  const p = inRange('pressure', pressureDbar, 0, 10_000, 'dbar');
  return salinityFromRt(r / (ratioOfPressure(r, t, p) * ratioOfTemperature(t)), t);
}

/**
 * Conductivity ratio R at one atmosphere from practical salinity: `salinityFromRatio` solved backwards.
 *
 * `practicalSalinity` 2 to 42; `t68C` -2 to 40 deg C on IPTS-68. Check [fm83 p.14]: S 35, t68 20 -> 1.116493.
 *
 * @throws Problem outside the ranges above.
 */
export function ratioFromSalinity(practicalSalinity: number, t68C: number): number {
  const s = inRange('salinity', practicalSalinity, pss78Range.salinityMin, pss78Range.salinityMax, '');
  const t = inRange('temperature', t68C, -2, 40, '°C');
  return surfaceRatio(s, t);
}

/** R at one atmosphere from S 2 to 42, not checked. */
function surfaceRatio(s: number, t68C: number): number {
  const ratioRt = risingRoot((rt) => salinityFromRt(rt, t68C) - s, 0, 2);
  if (ratioRt === undefined) throw new Error('PSS-78 has no root inside its own range');
  return ratioRt * ratioOfTemperature(t68C);
}

/**
 * Conductivity (mS/cm) at one atmosphere of water of a practical salinity.
 *
 * `practicalSalinity` 2 to 42; `tempC` -2 to 35 deg C on ITS-90. Source: fm83, cs80.
 * Check [teos10, computed]: S 35 at 25 -> 53.0710; at 15 -> 42.9175.
 * Doubt: this is the true conductivity at `tempC`. Many probes show it already "compensated" to 25 deg C: pass 25.
 *
 * @throws Problem outside the ranges above.
 */
export function conductivityMScm(practicalSalinity: number, tempC: number): number {
  const s = inRange('salinity', practicalSalinity, pss78Range.salinityMin, pss78Range.salinityMax, '');
  const t = inRange('temperature', tempC, pss78Range.tempMinC, pss78Range.tempMaxC, '°C');
  return standardMScm * surfaceRatio(s, t68FromT90(t));
}

/**
 * Practical salinity from conductivity (mS/cm) at one atmosphere.
 *
 * `conductivity` within that of S 2 to 42 at the temperature; `tempC` -2 to 35 deg C on ITS-90 (25 for a reading
 * compensated to 25). Check [teos10, computed]: 53.0 mS/cm at 25 -> 34.9473. Doubt: as `conductivityMScm`.
 *
 * @throws Problem outside the ranges above.
 */
export function salinityFromConductivity(conductivity: number, tempC: number): number {
  const min = conductivityMScm(pss78Range.salinityMin, tempC);
  const max = conductivityMScm(pss78Range.salinityMax, tempC);
  readingInRange({ field: 'conductivity', digits: 1, unit: 'mS/cm' }, conductivity, min, max);
  const t = t68FromT90(tempC);
  return salinityFromRt(conductivity / standardMScm / ratioOfTemperature(t), t);
}
