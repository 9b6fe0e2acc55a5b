import { inRange, Problem } from '../problem.ts';
import { say } from '../wording/say.ts';
import { inPpfdRange, MAX_PPFD } from './band.ts';

/**
 * Daily light of 1 umol m-2 s-1 held for one hour, mol m-2: 3600 s x 1e-6 mol.
 * Source dli. Check: 200 x 8 h = 5.76; 1 x 24 h = 0.0864.
 */
export const MOL_PER_PPFD_HOUR = 0.0036;

/** A day's lighting: hours at full light, and hours of a linear ramp up, with the same again down. */
export interface Photoperiod {
  readonly fullHours: number;
  /** Of one ramp; the lights are on for `fullHours + 2 rampHours`. */
  readonly rampHours: number;
}

/** Usual lighting of a reef tank, hours: main light, and all with ramps. Common practice, no source. */
export const usualFullHours = { low: 8, high: 10 } as const;
export const usualLitHours = { low: 10, high: 12 } as const;

/** Hours from the first light to the last. */
export function litHours(period: Photoperiod): number {
  return period.fullHours + 2 * period.rampHours;
}

export type DayVerdict = 'shorter than usual' | 'usual' | 'longer than usual' | 'too long';

/** How a day compares with the usual one; over 12 h lit is too long. Common practice, no source. */
export function dayVerdict(period: Photoperiod): DayVerdict {
  const lit = litHours(period);
  if (lit > usualLitHours.high) return 'too long';
  if (period.fullHours > usualFullHours.high) return 'longer than usual';
  return period.fullHours < usualFullHours.low && lit < usualLitHours.low ? 'shorter than usual' : 'usual';
}

/**
 * Usual hours of main light beside ramps of `rampHours` each way (0 to 6 h), so that the whole day stays within
 * 12 h: 8 to 10 h up to 1 h ramps, 6 h with 3 h ramps. Common practice, no source.
 *
 * @throws Problem outside that range.
 */
export function usualFullHoursBeside(rampHours: number): { readonly low: number; readonly high: number } {
  const room = usualLitHours.high - 2 * inRange('ramp', rampHours, 0, usualLitHours.high / 2, 'h');
  const high = Math.min(usualFullHours.high, room);
  return { low: Math.min(usualFullHours.low, high), high };
}

/**
 * Hours of full light that give the same daily total: a linear ramp counts half, and there are two of them.
 * 8 h full with 1 h up and 1 h down -> 9 h. Range: at least 0.25 h, and at most 24 h lit.
 *
 * @throws Problem outside that range.
 */
export function fullLightEquivalentHours(period: Photoperiod): number {
  inRange('ramp', period.rampHours, 0, 12, 'h');
  inRange('hours', period.fullHours, 0, 24, 'h');
  if (litHours(period) > 24) {
    throw new Problem(say('light.longerThanDay'), {
      field: 'hours',
      given: say('light.fullAndRamps', { full: String(period.fullHours), ramp: String(period.rampHours) }),
      limit: say('light.atMostDay'),
    });
  }
  return inRange('hours', period.fullHours + period.rampHours, 0.25, 24, 'h');
}

/**
 * Daily light in mol m-2 from the photon flux density at full light, `ppfd` in umol m-2 s-1 (up to `MAX_PPFD`).
 * Source dli. Check: 200 for 6, 8, 12, 16 h without ramps = 4.32, 5.76, 8.64, 11.52; 8 h with ramps of 1 h = 6.48.
 * Doubt: takes the lamp's ramp as linear in light at the coral, which a lamp's own curve need not be.
 *
 * @throws Problem outside the ranges.
 */
export function dailyLightMol(ppfd: number, period: Photoperiod): number {
  return inPpfdRange('reading', ppfd) * fullLightEquivalentHours(period) * MOL_PER_PPFD_HOUR;
}

/** A peak on the border may come back from its own total a little beyond it. */
const ROUNDING = 1e-6;

/**
 * Full-light photon flux density, umol m-2 s-1, that gives `totalMol` (mol m-2 a day) in `period`. The inverse of
 * `dailyLightMol`. Check: 5.76 mol in 12 h -> 133.3.
 *
 * @throws Problem when it is outside 1 to `MAX_PPFD`: no such light can or should be set.
 */
export function peakFor(totalMol: number, period: Photoperiod): number {
  const ppfd = totalMol / (fullLightEquivalentHours(period) * MOL_PER_PPFD_HOUR);
  if (ppfd >= 1 - ROUNDING && ppfd <= MAX_PPFD + ROUNDING) return ppfd;
  throw new Problem(say('light.peakNeeded', { peak: String(Math.round(ppfd)) }), {
    field: 'goal',
    given: `${period.fullHours} h`,
    limit: say('light.limitPeak', { most: String(MAX_PPFD) }),
    hint: say('light.hintHours'),
  });
}

/**
 * Hours of full light, beside ramps of `rampHours` each way, in which a peak of `ppfd` gives `totalMol`. The other
 * inverse of `dailyLightMol`. Check: 5.76 mol at 240 -> 6.67 h.
 *
 * @throws Problem when no hours of a day do it.
 */
export function fullHoursFor(totalMol: number, ppfd: number, rampHours: number): number {
  const fullHours = totalMol / (inPpfdRange('peak', ppfd) * MOL_PER_PPFD_HOUR) - rampHours;
  if (fullHours >= 0 && litHours({ fullHours, rampHours }) <= 24) return fullHours;
  throw new Problem(say('light.noHours'), {
    field: 'peak',
    given: `${Math.round(ppfd)} PAR`,
    limit: say('light.limitDay'),
    hint: say('light.hintPeak'),
  });
}
