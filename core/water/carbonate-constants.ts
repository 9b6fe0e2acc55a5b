import { inRange } from '../problem.ts';

/** The water an equilibrium is worked out for: practical salinity and temperature (deg C). */
export interface Water {
  readonly practicalSalinity: number;
  readonly tempC: number;
}

/**
 * Where every constant below holds: Lueker S 19 to 43 and 2 to 35 deg C, Mucci S 5 to 44 and 5 to 40 deg C, borate and
 * bisulfate S 5 to 45 and 0 to 45 deg C, and density to S 42.
 */
export const carbonateRange = { salinityMin: 19, salinityMax: 42, tempMinC: 5, tempMaxC: 35 } as const;

/** Checks that water is within `carbonateRange`; returns it. @throws Problem naming the range. */
export function inCarbonateRange(water: Water): Water {
  const { salinityMin, salinityMax, tempMinC, tempMaxC } = carbonateRange;
  inRange('salinity', water.practicalSalinity, salinityMin, salinityMax, '');
  inRange('temperature', water.tempC, tempMinC, tempMaxC, '°C');
  return water;
}

/**
 * Stoichiometric equilibrium constants of seawater at one atmosphere, mol per kg of solution: total pH scale, but `ks`
 * on the free scale (as in the guide). `kw` and both solubility products are mol2/kg2.
 */
export interface CarbonateConstants {
  readonly k1: number;
  readonly k2: number;
  readonly kb: number;
  readonly kw: number;
  readonly ks: number;
  readonly kf: number;
  readonly kspAragonite: number;
  readonly kspCalcite: number;
}

/**
 * The constants of the carbonate system. Range: `carbonateRange`.
 *
 * Sources and checks at S 35, 25 deg C [dsc07 ch. 5; solubility zw01]:
 * K1, K2 lueker00: log10 -5.8472, -8.9660; KB Dickson 1990 through dsc07: ln -19.7964;
 * KW Millero 1995 through dsc07: ln -30.434; KS Dickson 1990 through dsc07: ln -2.30; KF pf87 through dsc07: ln -6.09;
 * Ksp mucci83: aragonite log10 -6.1883, calcite -6.3693.
 * Doubt: the guide's KW carries a fixed shift of -0.015 between pH scales where codes compute -0.022 to -0.030, and KF
 * is read by some codes on the free scale; together below 0.3 umol/kg of DIC. Sets of K1 and K2 differ by about 0.01 in pK (from memory).
 *
 * @throws Problem outside the range.
 */
export function carbonateConstants(water: Water): CarbonateConstants {
  const { practicalSalinity: s, tempC } = inCarbonateRange(water);
  const t = tempC + 273.15;
  return {
    k1: 10 ** -(3633.86 / t - 61.2172 + 9.6777 * Math.log(t) - 0.011555 * s + 0.0001152 * s * s),
    k2: 10 ** -(471.78 / t + 25.929 - 3.16967 * Math.log(t) - 0.01781 * s + 0.0001122 * s * s),
    kb: Math.exp(lnKB(s, t)),
    kw: Math.exp(lnKW(s, t)),
    ks: bisulfateKFree(s, t),
    kf: Math.exp(874 / t - 9.68 + 0.111 * Math.sqrt(s)),
    kspAragonite: 10 ** logKspAragonite(s, t),
    kspCalcite: 10 ** logKspCalcite(s, t),
  };
}

/** Ionic strength of seawater, mol per kg of water [dsc07 ch. 5]: 0.7228 at S 35. */
export function ionicStrength(practicalSalinity: number): number {
  return (19.924 * practicalSalinity) / (1000 - 1.005 * practicalSalinity);
}

function lnKB(s: number, t: number): number {
  const root = Math.sqrt(s);
  return (
    (-8966.9 - 2890.53 * root - 77.942 * s + 1.728 * s * root - 0.0996 * s * s) / t +
    (148.0248 + 137.1942 * root + 1.62142 * s) +
    (-24.4344 - 25.085 * root - 0.2474 * s) * Math.log(t) +
    0.053105 * root * t
  );
}

function lnKW(s: number, t: number): number {
  const slope = 118.67 / t - 5.977 + 1.0495 * Math.log(t);
  return 148.9652 - 13847.26 / t - 23.6521 * Math.log(t) + slope * Math.sqrt(s) - 0.01615 * s;
}

function bisulfateKFree(s: number, t: number): number {
  const i = ionicStrength(s);
  const lnT = Math.log(t);
  const ln =
    -4276.1 / t +
    141.328 -
    23.093 * lnT +
    (-13856 / t + 324.57 - 47.986 * lnT) * Math.sqrt(i) +
    (35474 / t - 771.54 + 114.723 * lnT) * i -
    (2698 / t) * i ** 1.5 +
    (1776 / t) * i * i;
  return Math.exp(ln) * (1 - 0.001005 * s);
}

function logKspAragonite(s: number, t: number): number {
  const root = Math.sqrt(s);
  const fresh = -171.945 - 0.077993 * t + 2903.293 / t + 71.595 * Math.log10(t);
  return fresh + (-0.068393 + 0.0017276 * t + 88.135 / t) * root - 0.10018 * s + 0.0059415 * s * root;
}

function logKspCalcite(s: number, t: number): number {
  const root = Math.sqrt(s);
  const fresh = -171.9065 - 0.077993 * t + 2839.319 / t + 71.595 * Math.log10(t);
  return fresh + (-0.77712 + 0.0028426 * t + 178.34 / t) * root - 0.07711 * s + 0.0041249 * s * root;
}
