import { readingInRange } from './reading-range.ts';
import { risingRoot } from './root.ts';
import { densityKgM3, eos80Range } from './seawater.ts';

/**
 * The two temperatures of a specific gravity: the sample's and the pure water's (deg C, ITS-90). In every scale sold
 * to keepers they are equal. A specific gravity without them is ambiguous: 1.0264 is S 34.40, 34.73 or 35.04.
 */
export const gravityPairs = {
  '60F/60F': {
    sampleC: (60 - 32) / 1.8,
    waterC: (60 - 32) / 1.8,
    name: '60 °F / 60 °F (older glass hydrometers)',
  },
  '20/20': { sampleC: 20, waterC: 20, name: '20 °C / 20 °C (many refractometers)' },
  '25/25': { sampleC: 25, waterC: 25, name: '25 °C / 25 °C (reef practice)' },
} as const;

export type GravityPair = keyof typeof gravityPairs;

/** Volume expansion of hydrometer glass, per K. From memory, no source seen; it shifts a reading by about 0.0002. */
const glassExpansionPerK = 2.5e-5;

/**
 * Specific gravity SG(t/tref) = rho(S,t) / rho(0,tref) of seawater, no unit.
 *
 * `practicalSalinity` 0 to 42. Source: fm83 (EOS-80). Check [computed from fm83]: S 35 -> 1.026859 (60F/60F),
 * 1.026604 (20/20), 1.026373 (25/25). Doubt: TEOS-10 agrees within 4e-6, far below what can be read.
 *
 * @throws Problem outside the range.
 */
export function specificGravity(practicalSalinity: number, pair: GravityPair): number {
  return hydrometerReading(practicalSalinity, pair, gravityPairs[pair].sampleC);
}

/**
 * Practical salinity from a specific gravity that already refers to the pair's temperatures (corrected, or read in
 * water at the sample temperature).
 *
 * `sg` from 1.000 (fresh) to the value at S 42, about 1.032. Check [computed from fm83]: 1.0264 -> 34.404 (60F/60F),
 * 34.733 (20/20), 35.036 (25/25).
 *
 * @throws Problem outside the range.
 */
export function salinityFromSpecificGravity(sg: number, pair: GravityPair): number {
  return salinityFromHydrometer(sg, pair, gravityPairs[pair].sampleC);
}

/**
 * What a glass hydrometer made for `pair` shows in water of `waterTempC`: rho(S,t) (1 + g (t - tsample)) / rho(0,tref),
 * the glass having grown by g per K.
 *
 * `practicalSalinity` 0 to 42; `waterTempC` -2 to 40 deg C. Check [computed from fm83, glass left out by g = 0]:
 * S 35, 60F/60F in 25 deg C water -> 1.024350. Doubt: g is from memory; a plastic swing arm follows no formula.
 *
 * @throws Problem outside the ranges.
 */
export function hydrometerReading(
  practicalSalinity: number,
  pair: GravityPair,
  waterTempC: number,
  expansionPerK = glassExpansionPerK,
): number {
  const { sampleC, waterC } = gravityPairs[pair];
  const glass = 1 + expansionPerK * (waterTempC - sampleC);
  return (densityKgM3(practicalSalinity, waterTempC) * glass) / densityKgM3(0, waterC);
}

/**
 * Practical salinity from a glass hydrometer made for `pair` and read in water of another temperature.
 *
 * `sgReading` within what S 0 to 42 shows at that temperature (below 1.000 is possible in warm water); `waterTempC`
 * -2 to 40 deg C. Inverse of `hydrometerReading`. Doubt: as there.
 *
 * @throws Problem outside the ranges.
 */
export function salinityFromHydrometer(
  sgReading: number,
  pair: GravityPair,
  waterTempC: number,
  expansionPerK = glassExpansionPerK,
): number {
  const shown = (s: number) => hydrometerReading(s, pair, waterTempC, expansionPerK);
  const { salinityMin, salinityMax } = eos80Range;
  const kind = { field: 'specific gravity', digits: 4, unit: '' };
  const sg = readingInRange(kind, sgReading, shown(salinityMin), shown(salinityMax));
  const s = risingRoot((salinity) => shown(salinity) - sg, salinityMin, salinityMax);
  if (s === undefined) throw new Error('EOS-80 has no root inside its own range');
  return s;
}
