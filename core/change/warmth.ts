import { inRange, Problem } from '../problem.ts';
import { say } from '../wording/say.ts';

/**
 * Two waters of different temperature poured together. `fraction` is the part of the whole that the second one makes,
 * above 0 to 1. Heat balance with equal heat capacities a litre; doubt: a litre at 35 ppt takes about 2 % less heat than
 * one of fresh water (from memory), and glass, air and evaporation cool the lot a little more.
 */
export interface Mixing {
  readonly nowC: number;
  readonly freshC: number;
  readonly fraction: number;
}

/** Liquid water, deg C; the readers take no more than 60. */
const LIQUID_C = { min: -2, max: 100 } as const;

function liquid(field: string, tempC: number): number {
  return inRange(field, tempC, LIQUID_C.min, LIQUID_C.max, '°C');
}

/**
 * Temperature of the mixture: T1 + f (T2 - T1), deg C. Source: heat balance [mixing].
 * Check: 25 deg C, 20 % at 18 -> 23.6; equal parts of 20 and 30 -> 25.
 */
export function mixedTempC({ nowC, freshC, fraction }: Mixing): number {
  const now = liquid('now', nowC);
  return now + inRange('share', fraction, 0, 1, '') * (liquid('fresh', freshC) - now);
}

/**
 * Temperature the second water must have for the mixture to be at the goal: T1 + (Tg - T1)/f.
 * Check: 24 to 25 deg C by 20 % -> 29.
 *
 * @throws Problem where that is no liquid water.
 */
export function freshTempC(nowC: number, goalC: number, fraction: number): number {
  const needed = liquid('now', nowC) + (liquid('goal', goalC) - nowC) / fraction;
  if (needed >= LIQUID_C.min && needed <= LIQUID_C.max) return needed;
  throw new Problem(say('change.tooLittle'), {
    field: 'share',
    hint: say('change.hintMoreWater'),
  });
}

/**
 * Part of the whole that the second water must be: (Tg - T1)/(T2 - T1). Check: 18 to 25 deg C with water of 60 -> 1/6.
 *
 * @returns undefined where the goal does not lie between the two temperatures.
 */
export function warmFraction(nowC: number, goalC: number, freshC: number): number | undefined {
  const fraction = (liquid('goal', goalC) - liquid('now', nowC)) / (liquid('fresh', freshC) - nowC);
  return fraction > 0 && fraction < 1 ? fraction : undefined;
}

/** Litres to add to what is there, nothing taken out, so that they make `fraction` of the whole: V f/(1 - f). */
export function addedL(volumeL: number, fraction: number): number {
  return (volumeL * fraction) / (1 - fraction);
}
