import { addedL } from '../../core/change/warmth.ts';
import { fixed, inUnit, volume } from '../../core/quantity/format.ts';
import { limitsOf, sideOf, urgentSide } from '../../core/water/limits.ts';
import { percent, type Water } from '../waterchange/pour.ts';

/** Water poured into other water, all of it known; `isTank`: as much was taken out first. */
export interface Pouring {
  readonly nowC: number;
  readonly freshC: number;
  readonly goalC: number;
  /** Part of the whole that goes in. */
  readonly fraction: number;
  readonly water: Water;
  readonly isTank: boolean;
}

/** Water for a tank that is warmer or colder than this burns or chills what it touches. Own choice: reefs end there. */
const [COLDEST_C, WARMEST_C] = limitsOf('temperature').believable;
/** From here up water scalds people in seconds to minutes (from memory). */
const SCALDS_C = 50;

/** "25 °C", or "77 °F (25 °C)" for those who write °F. */
export function inBoth(tempC: number, unit: string): string {
  const celsius = inUnit('temperature', tempC, '°C', 1);
  return unit === '°F' ? `${inUnit('temperature', tempC, '°F', 1)} (${celsius})` : celsius;
}

/** The first line: what was left out of water, goal and amount. */
export function poured(...asked: Parameters<typeof sentence>): string {
  const text = sentence(...asked);
  return text.charAt(0).toUpperCase() + text.slice(1);
}

function sentence(
  pouring: Pouring,
  given: { readonly fresh: boolean; readonly goal: boolean },
  unit: string,
): string {
  const { nowC, freshC, goalC } = pouring;
  const much = amountWords(pouring);
  if (!given.goal)
    return `${isUrgent(pouring) ? 'Do not do that: ' : ''}${much} of ${inBoth(freshC, unit)} takes ${inBoth(nowC, unit)} to ${inBoth(goalC, unit)}.`;
  if (given.fresh)
    return `${isHarsh(pouring) ? 'Do not do it with water so far off: ' : ''}${much} of ${inBoth(freshC, unit)} brings ${inBoth(nowC, unit)} to ${inBoth(goalC, unit)}.`;
  return isHarsh(pouring)
    ? `Do not do it with water: ${much} would have to be ${inBoth(freshC, unit)} to bring ${inBoth(nowC, unit)} to ${inBoth(goalC, unit)}.`
    : `Make it ${inBoth(freshC, unit)}: ${much} then brings ${inBoth(nowC, unit)} to ${inBoth(goalC, unit)}.`;
}

/** "A change of 20 % (20 L per 100 L)", "3.99 L more". */
function amountWords({ fraction, water, isTank }: Pouring): string {
  if (isTank) return `a change of ${percent(fraction)} (${water.part(fraction)})`;
  const per = water.part(1).endsWith('per 100 L') ? ' per 100 L' : '';
  return `${volume(addedL(water.volumeL, fraction))}${per} more`;
}

function isUrgent({ goalC, isTank }: Pouring): boolean {
  return isTank && urgentSide('temperature', goalC) !== undefined;
}

function isHarsh({ freshC, isTank }: Pouring): boolean {
  return isTank && sideOf(freshC, [COLDEST_C, WARMEST_C]) !== undefined;
}

export function warmSteps(pouring: Pouring): readonly string[] {
  const { isTank, goalC } = pouring;
  return isTank
    ? [
        ...(isHarsh(pouring) ? ['Let the heater, or the room, do it slowly instead.'] : []),
        'Take the old water out first, then add the new slowly into strong flow, away from corals.',
        'Read both with the same thermometer, and the tank again after ten minutes.',
        'Match the new water in salinity too.',
      ]
    : [
        'Pour in most of it, stir, read the temperature, then the rest.',
        `It cools as it stands: bring it to ${fixed(goalC, 1)} °C just before use, or leave heater and pump in it.`,
        'Warm it before or after mixing the salt, not by hot tap water where a softener or copper pipes are.',
      ];
}

export function warmDangers(pouring: Pouring): readonly string[] {
  const { nowC, freshC, goalC, isTank } = pouring;
  const { pace } = limitsOf('temperature');
  const most = goalC < nowC ? pace?.down : pace?.up;
  const move = Math.abs(goalC - nowC);
  return [
    ...(isTank && most !== undefined && move > most * (1 + 1e-9)
      ? [
          `That moves the tank by ${fixed(move, 1)} °C at once; the usual limit is ${most} °C a day: change less.`,
        ]
      : []),
    ...(isHarsh(pouring)
      ? [`Water of ${fixed(freshC, 0)} °C harms what it touches: do not pour it into a tank with animals.`]
      : []),
    ...(freshC >= SCALDS_C
      ? ['Hot water scalds: carry little at a time, and never into glass or a bin that it can crack.']
      : []),
    'Unplug heaters before the water level falls; reach in only with pumps and heaters unplugged.',
  ];
}
