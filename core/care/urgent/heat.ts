import { inRange } from '../../problem.ts';
import { densityKgM3 } from '../../water/seawater.ts';

/** Heat capacity of sea water near S 35 and 25 deg C, and of fresh water, kJ/(kg K); from memory. */
const SEA_KJ = 3.99;
const FRESH_KJ = 4.18;
/** Heat that melts a kilogram of ice, kJ; from memory. */
const MELTING_KJ = 334;

/** Water of a tank from freezing to hotter than anything in it lives, °C: where both sums hold. */
const WATER_C = { least: 0, most: 45 } as const;

/** Heat to move `volumeL` of tank water by `byC` degrees, kJ. Check: 100 L by 1 at S 35, 25 deg C -> 408 kJ. */
function heatKJ(volumeL: number, byC: number): number {
  return (volumeL * densityKgM3(35, 25) * SEA_KJ * byC) / 1000;
}

/**
 * Frozen water in closed bottles that takes `byC` degrees out of the tank, kg, when it melts and warms to `toC`.
 * V rho c dT / (334 + 4.18 T). Constants from memory. `byC` 0 to 15, `toC` 0 to 45.
 * Check: 100 L by 1 to 27 deg C -> 408.3/(334 + 112.9) = 0.914 kg. Doubt: the room goes on heating; expect to need more.
 */
export function iceKg(volumeL: number, byC: number, toC: number): number {
  const to = inRange('temperature', toC, WATER_C.least, WATER_C.most, '°C');
  return heatKJ(volumeL, inRange('temperature', byC, 0, 15, '°C')) / (MELTING_KJ + FRESH_KJ * to);
}

/**
 * Warm water in closed bottles that brings `byC` degrees into the tank, litres (taken as kg), when it cools from
 * `bottleC` to `toC`, which is 0 to 45 and below the bottle. Check: 100 L by 1 to 22 deg C with 40 deg C -> 408.3/(4.18 x 18) = 5.43 L.
 */
export function warmWaterL(volumeL: number, byC: number, toC: number, bottleC = 40): number {
  const to = inRange('temperature', toC, WATER_C.least, Math.min(WATER_C.most, bottleC - 1), '°C');
  return heatKJ(volumeL, inRange('temperature', byC, 0, 15, '°C')) / (FRESH_KJ * (bottleC - to));
}
