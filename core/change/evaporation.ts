import { inRange } from '../problem.ts';
import { densityKgM3 } from '../water/seawater.ts';
import { mixRange } from './salt.ts';

/** Most of the water that may be gone, as a part of the volume: beyond it no tank is one. Own choice. */
const MOST_GONE = 0.5;

/** Mass of a litre of fresh water over that of a litre of the tank, at 25 deg C (fm83). Check: 35 -> 0.9743. */
function freshOverTank(practicalSalinity: number): number {
  return densityKgM3(0, 25) / densityKgM3(practicalSalinity, 25);
}

/**
 * Salinity after fresh water evaporated and nothing was added: S/(1 - e r), `goneFraction` e being the litres that went
 * over the litres of the tank before (0 to 0.5) and r the weight of fresh over tank water: the mass of salt stays.
 * Source: mass balance [mixing], densities [fm83]. Check: 35, 4 % -> 36.42 (36.46 if litres are taken for kilograms).
 * Doubt: salt creep and spray carry a little away.
 *
 * @throws Problem outside S 2 to 42 before, or e above 0.5.
 */
export function afterEvaporation(nowS: number, goneFraction: number): number {
  const now = inRange('now', nowS, mixRange.min, mixRange.max, 'ppt');
  const gone = inRange('evaporation', goneFraction, 0, MOST_GONE, 'of the volume');
  return now / (1 - gone * freshOverTank(now));
}

/** Litres, as a part of the volume, that evaporate until `toS` is reached: (1 - S/S2)/r. Check: 35 to 37 -> 0.0555. */
export function goneUntil(fromS: number, toS: number): number {
  const from = inRange('now', fromS, mixRange.min, mixRange.max, 'ppt');
  return (1 - from / inRange('goal', toS, from, mixRange.max, 'ppt')) / freshOverTank(from);
}
