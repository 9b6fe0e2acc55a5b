import { inRange, Problem } from '../problem.ts';
import { say } from '../wording/say.ts';
import { luminousEfficiency, TABLE_END_NM, TABLE_START_NM } from './luminous.ts';

/** Spectral power at a wavelength in nm, in any unit: only its shape counts. */
export type Spectrum = (nm: number) => number;

/** Lumens per watt where V(lambda) = 1: SI K_cd = 683 lm/W at 540 THz, 683.002 at the maximum. Source si19. */
export const LUMEN_PER_WATT = 683.002;
/** Photons per joule, umol/J per nm of wavelength: 1e-3 / (h c N_A) in exact SI units. Check: 550 nm -> 4.59764. */
export const UMOL_PER_JOULE_NM = 0.008359347229;

const PAR_START_NM = 400;
const PAR_END_NM = 700;

/**
 * Lux per umol m-2 s-1 of a spectrum: 683.002 x integral(E V) / integral over 400-700 nm(E x nm x 0.008359347),
 * both by trapezoid at 1 nm, the first over 380-780 nm.
 *
 * Source cie, si19. Check: equal energy 52.913, Planck 2856 K 50.26; Gaussian bands 450/20 7.3474, 525/35 115.635.
 * Doubt: that of `luminousEfficiency`, under 0.1 % from 420 nm up.
 *
 * @throws Problem when the spectrum has no power from 400 to 700 nm.
 */
export function luxPerPpfd(spectrum: Spectrum): number {
  const power = trapezoid(TABLE_START_NM, TABLE_END_NM, (nm) => spectrum(nm) * luminousEfficiency(nm));
  const photons = trapezoid(PAR_START_NM, PAR_END_NM, (nm) => spectrum(nm) * nm * UMOL_PER_JOULE_NM);
  if (photons > 0 && Number.isFinite(power)) return (LUMEN_PER_WATT * power) / photons;
  throw new Problem(say('light.noLight'), {
    field: 'lamp',
    limit: say('convert.fromTo', { low: '400', high: '700 nm' }),
  });
}

function trapezoid(from: number, to: number, f: (nm: number) => number): number {
  const points = Array.from({ length: to - from + 1 }, (_, index) => f(from + index));
  const ends = ((points[0] ?? 0) + (points.at(-1) ?? 0)) / 2;
  return points.reduce((sum, value) => sum + value, 0) - ends;
}

/**
 * A narrow LED band: Gaussian in spectral power, with its peak (400 to 700 nm) and full width at half maximum
 * (5 to 100 nm). FWHM = 2 sqrt(2 ln 2) sigma. A model: a real LED is a little lopsided.
 *
 * @throws Problem outside those ranges.
 */
export function gaussianBand(peakNm: number, fwhmNm: number): Spectrum {
  inRange('peak', peakNm, PAR_START_NM, PAR_END_NM, 'nm');
  const sigmaNm = inRange('width', fwhmNm, 5, 100, 'nm') / (2 * Math.sqrt(2 * Math.LN2));
  return (nm) => Math.exp(-0.5 * ((nm - peakNm) / sigmaNm) ** 2);
}

/** Second radiation constant h c / k, nm K. Source si19 (exact constants). */
const C2_NM_K = 1.438776877e7;

/**
 * A black body of `tempK` (1000 to 50,000 K): nm^-5 / (exp(c2 / (nm T)) - 1). Check: 2856 K, which is CIE A, has
 * 50.26 lux per umol m-2 s-1; 6500 K 54.387.
 *
 * @throws Problem outside that range.
 */
export function planckian(tempK: number): Spectrum {
  const checkedK = inRange('temperature', tempK, 1000, 50_000, 'K');
  return (nm) => nm ** -5 / Math.expm1(C2_NM_K / (nm * checkedK));
}

/** One part of a mix: its share of the photons (any positive scale) and its own lux per umol m-2 s-1. */
export interface MixPart {
  readonly photonShare: number;
  readonly luxPerPpfd: number;
}

/**
 * Lux per umol m-2 s-1 of lights that shine together: the mean of theirs by share of photons.
 * Check: half 450/20 (7.3474) and half CIE LED-B5 (69.401) -> 38.374.
 *
 * @throws Problem when no part has a share, or a share is negative.
 */
export function mixLuxPerPpfd(parts: readonly MixPart[]): number {
  const total = parts.reduce((sum, part) => sum + part.photonShare, 0);
  if (!(total > 0) || parts.some((part) => part.photonShare < 0)) {
    throw new Problem(say('light.mixShares'), { field: 'share' });
  }
  return parts.reduce((sum, part) => sum + part.photonShare * part.luxPerPpfd, 0) / total;
}

/** A low and a high value. */
export interface Span {
  readonly low: number;
  readonly high: number;
}

/**
 * The photon flux density a reading in lux can stand for, umol m-2 s-1, under light of `luxPerPpfd` from low to
 * high: lux / high to lux / low. Always a range: a spectrum is never known to one number. Range 1 to 200,000 lux.
 * Check: 9000 lux at 7 to 70 lux per umol -> 129 to 1286.
 *
 * @throws Problem outside that range.
 */
export function ppfdSpan(lux: number, factors: Span): Span {
  const checked = inRange('reading', lux, 1, 200_000, 'lux');
  return { low: checked / factors.high, high: checked / factors.low };
}
