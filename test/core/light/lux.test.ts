import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cieIlluminants } from '../../../core/light/illuminant.ts';
import {
  gaussianBand,
  luxPerPpfd,
  mixLuxPerPpfd,
  planckian,
  ppfdSpan,
  UMOL_PER_JOULE_NM,
  type MixPart,
  type Spectrum,
} from '../../../core/light/lux.ts';
import { Problem } from '../../../core/problem.ts';

const CIE = 'worked out independently from the 1 nm CIE table: Gaussian in spectral power, 1 nm trapezoid';

/** Relative tolerance: what interpolating the 10 nm table costs. Measured worst: 0.21 % at 405 nm, else 0.063 %. */
const BAND = 7e-4;
const bands = [
  { peak: 405, width: 15, expected: 0.2273, tolerance: 2.5e-3, source: CIE },
  { peak: 420, width: 20, expected: 1.1061, tolerance: BAND, source: CIE },
  { peak: 430, width: 20, expected: 2.4704, tolerance: BAND, source: CIE },
  { peak: 450, width: 20, expected: 7.3474, tolerance: BAND, source: CIE },
  { peak: 450, width: 25, expected: 7.6015, tolerance: BAND, source: CIE },
  { peak: 470, width: 20, expected: 16.8594, tolerance: BAND, source: CIE },
  { peak: 475, width: 25, expected: 21.2927, tolerance: BAND, source: CIE },
  { peak: 500, width: 30, expected: 59.4273, tolerance: BAND, source: CIE },
  { peak: 525, width: 35, expected: 115.6348, tolerance: BAND, source: CIE },
  { peak: 590, width: 20, expected: 104.1562, tolerance: BAND, source: CIE },
  { peak: 630, width: 20, expected: 35.4962, tolerance: BAND, source: CIE },
  { peak: 660, width: 20, expected: 8.3197, tolerance: BAND, source: CIE },
];

const relative = (found: number, expected: number): number => Math.abs(found / expected - 1);
const band = (peak: number, width: number): number => luxPerPpfd(gaussianBand(peak, width));

const part = (photonShare: number, factor: number): MixPart => ({ photonShare, luxPerPpfd: factor });

/** Photons of a spectrum from 400 to 700 nm, on a scale of its own. */
function photons(spectrum: Spectrum): number {
  return Array.from({ length: 301 }, (_, i) => spectrum(400 + i) * (400 + i)).reduce((a, b) => a + b, 0);
}

describe('luxPerPpfd of narrow bands', () => {
  it.each(bands)('$peak/$width nm: $expected', ({ peak, width, expected, tolerance }) => {
    expect(relative(band(peak, width), expected)).toBeLessThan(tolerance);
  });
});

describe('luxPerPpfd of broad spectra', () => {
  const planck = 'Planck radiator worked out from the 1 nm CIE table';
  it.each([
    { tempK: 2700, expected: 48.917, source: planck },
    { tempK: 2856, expected: 50.26, source: planck },
    { tempK: 4000, expected: 54.977, source: planck },
    { tempK: 5000, expected: 55.435, source: planck },
    { tempK: 6500, expected: 54.387, source: planck },
    { tempK: 10_000, expected: 51.494, source: planck },
    { tempK: 20_000, expected: 47.913, source: planck },
  ])('black body of $tempK K: $expected', ({ tempK, expected }) => {
    expect(relative(luxPerPpfd(planckian(tempK)), expected)).toBeLessThan(5e-5);
  });

  it('equal energy is CIE E, and 2856 K is CIE A', () => {
    expect(
      relative(
        luxPerPpfd(() => 1),
        cieIlluminants.E.luxPerPpfd,
      ),
    ).toBeLessThan(5e-5);
    expect(relative(luxPerPpfd(planckian(2856)), cieIlluminants.A.luxPerPpfd)).toBeLessThan(1e-4);
  });

  it('does not depend on how bright the lamp is', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-6, max: 1e6, noNaN: true }),
        fc.integer({ min: 410, max: 690 }),
        (power, peak) => {
          const spectrum = gaussianBand(peak, 20);
          expect(
            relative(
              luxPerPpfd((nm) => power * spectrum(nm)),
              luxPerPpfd(spectrum),
            ),
          ).toBeLessThan(1e-9);
        },
      ),
    );
  });

  it('refuses a spectrum without light, and bands out of range', () => {
    expect(() => luxPerPpfd(() => 0)).toThrow(Problem);
    expect(() => gaussianBand(350, 20)).toThrow(Problem);
    expect(() => gaussianBand(450, 0)).toThrow(Problem);
    expect(() => planckian(0)).toThrow(Problem);
  });
});

describe('photons per joule, exact SI constants', () => {
  it.each([
    [400, 3.34374],
    [450, 3.76171],
    [550, 4.59764],
    [660, 5.51717],
    [700, 5.85154],
  ])('%s nm: %s umol/J', (nm, expected) => {
    expect(nm * UMOL_PER_JOULE_NM).toBeCloseTo(expected, 5);
  });

  it('is 1e-3 / (h c N_A)', () => {
    // SI Brochure 2019: h, c and N_A are exact; nm and umol give 1e-9 x 1e6.
    expect(UMOL_PER_JOULE_NM).toBeCloseTo(1e-3 / (6.62607015e-34 * 299792458 * 6.02214076e23), 12);
  });
});

describe('mixLuxPerPpfd: by share of photons', () => {
  const { D65, 'LED-B5': b5 } = cieIlluminants;
  const source = 'mixes worked out from the 1 nm CIE table';
  it.each([
    { parts: [part(0.5, band(450, 20)), part(0.5, b5.luxPerPpfd)], expected: 38.3742, source },
    {
      parts: [part(0.7, band(450, 20)), part(0.1, band(420, 20)), part(0.2, D65.luxPerPpfd)],
      expected: 16.3534,
      source,
    },
    { parts: [part(0.8, band(450, 20)), part(0.2, band(470, 20))], expected: 9.2498, source },
    {
      parts: [part(0.6, band(450, 20)), part(0.2, band(525, 35)), part(0.2, band(630, 20))],
      expected: 34.6347,
      source,
    },
  ])('$expected', ({ parts, expected }) => {
    expect(relative(mixLuxPerPpfd(parts), expected)).toBeLessThan(1e-4);
  });

  it('equals the factor of the spectra added up with those photon shares', () => {
    const [blue, red] = [gaussianBand(450, 20), gaussianBand(630, 20)];
    const together = (nm: number): number =>
      (0.7 * blue(nm)) / photons(blue) + (0.3 * red(nm)) / photons(red);
    const mixed = mixLuxPerPpfd([part(0.7, luxPerPpfd(blue)), part(0.3, luxPerPpfd(red))]);
    expect(relative(luxPerPpfd(together), mixed)).toBeLessThan(1e-6);
  });

  it('refuses a mix of nothing and negative shares', () => {
    expect(() => mixLuxPerPpfd([])).toThrow(Problem);
    expect(() => mixLuxPerPpfd([part(-1, 5), part(3, 5)])).toThrow(Problem);
  });
});

describe('ppfdSpan', () => {
  it('9000 lux at 7 to 70 lux per umol is 129 to 1286', () => {
    const span = ppfdSpan(9000, { low: 7, high: 70 });
    expect(span.low).toBeCloseTo(128.571, 3);
    expect(span.high).toBeCloseTo(1285.714, 3);
  });

  it.each([0, -1, 1e6, Number.NaN])('refuses %s lux', (lux) => {
    expect(() => ppfdSpan(lux, { low: 7, high: 70 })).toThrow(Problem);
  });
});
