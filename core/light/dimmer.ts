import { inRange } from '../problem.ts';
import { inPpfdRange } from './band.ts';

/** A photon flux density measured at one spot with the lamp at a known setting. */
export interface DimmerReading {
  /** umol m-2 s-1 */
  readonly ppfd: number;
  /** Per cent of full power, every channel in the same proportion. */
  readonly settingPercent: number;
}

/** The setting for a goal, or, where full power does not reach it, what full power gives. */
export type DimmerSetting =
  | { readonly reached: true; readonly settingPercent: number; readonly ppfdAtFull: number }
  | { readonly reached: false; readonly ppfdAtFull: number };

/** Beyond this ratio between the two settings the proportional model is a guess. This project's own choice. */
export const FAR_RATIO = 2;

/**
 * The setting for `goalPpfd` (umol m-2 s-1) from one reading: setting x goal / reading. Range: 1 to 100 % and light
 * of 1 to `MAX_PPFD`. Check: 120 at 50 %, goal 150 -> 62.5 %.
 *
 * A proportional model, so approximate: a lamp's light is not linear in its setting (driver curve, temperature,
 * channels that switch on late). Measure again at the new setting. Common practice, no source.
 *
 * @throws Problem outside the ranges.
 */
export function dimmerSetting(reading: DimmerReading, goalPpfd: number): DimmerSetting {
  const ppfd = inPpfdRange('reading', reading.ppfd);
  const at = inRange('at', reading.settingPercent, 1, 100, '%');
  const settingPercent = (at * inPpfdRange('goal', goalPpfd)) / ppfd;
  const ppfdAtFull = (ppfd * 100) / at;
  return settingPercent > 100
    ? { reached: false, ppfdAtFull }
    : { reached: true, settingPercent, ppfdAtFull };
}

/** Whether the two settings are so far apart that the result is only a first try. */
export function isFarFromReading(settingPercent: number, atPercent: number): boolean {
  return settingPercent > atPercent * FAR_RATIO || settingPercent < atPercent / FAR_RATIO;
}
