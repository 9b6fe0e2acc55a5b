import { describe, expect, it } from 'vitest';
import { palette } from '../../../core/picture/palette.ts';

type Triple = readonly [number, number, number];

/** Linear red, green, blue of a colour, 0 to 1 (IEC 61966-2-1). */
function linear(hex: string): Triple {
  const channel = (at: number): number => {
    const value = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
  };
  return [channel(1), channel(3), channel(5)];
}

function apply(rows: readonly Triple[], [r, g, b]: Triple): Triple {
  const [x = 0, y = 0, z = 0] = rows.map((row) => row[0] * r + row[1] * g + row[2] * b);
  return [x, y, z];
}

const SRGB_TO_XYZ: readonly Triple[] = [
  [0.4124, 0.3576, 0.1805],
  [0.2126, 0.7152, 0.0722],
  [0.0193, 0.1192, 0.9505],
];

/** WCAG 2.1 contrast ratio. */
function contrast(one: string, other: string): number {
  const [low = 0, high = 0] = [one, other]
    .map((hex) => apply(SRGB_TO_XYZ, linear(hex))[1])
    .sort((a, b) => a - b);
  return (high + 0.05) / (low + 0.05);
}

/** CIE 1976 L*a*b*, D65. */
function lab(rgb: Triple): Triple {
  const white: Triple = [0.9505, 1, 1.089];
  const [x, y, z] = apply(SRGB_TO_XYZ, rgb).map((value, i) => {
    const share = Math.max(0, value) / (white[i] ?? 1);
    return share > 216 / 24_389 ? Math.cbrt(share) : (841 / 108) * share + 4 / 29;
  }) as [number, number, number];
  return [116 * y - 16, 500 * (x - y), 200 * (y - z)];
}

/**
 * What a reader without one kind of cone sees: Machado, Oliveira & Fernandes 2009, IEEE Trans. Vis. Comput. Graph.
 * 15:1291-1298, severity 1 (from memory; each row adds up to 1, as it must for greys to stay grey).
 */
const SEEN: Readonly<Record<string, readonly Triple[]>> = {
  'all cones': [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ],
  'no long cones': [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998],
  ],
  'no middle cones': [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881],
  ],
  'no short cones': [
    [1.255528, -0.076749, -0.178779],
    [-0.078411, 0.930809, 0.147602],
    [0.004733, 0.691367, 0.3039],
  ],
};

function difference(one: string, other: string, seen: readonly Triple[]): number {
  const [a, b] = [one, other].map((hex) => lab(apply(seen, linear(hex))));
  return Math.hypot(...[0, 1, 2].map((i) => (a?.[i] ?? 0) - (b?.[i] ?? 0)));
}

describe('contrast (WCAG 2.1)', () => {
  it('is computed right: black on white is 21, #777777 on white 4.48', () => {
    expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 5);
    expect(contrast('#777777', '#ffffff')).toBeCloseTo(4.48, 2);
  });

  it.each(['ink', 'quietInk', 'reading', 'trend', 'addition', 'alert'] as const)(
    '%s stands at 4.5 : 1 on the ground and on the target',
    (name) => {
      expect(contrast(palette[name], palette.ground)).toBeGreaterThanOrEqual(4.5);
      expect(contrast(palette[name], palette.target)).toBeGreaterThanOrEqual(4.5);
    },
  );

  it.each(['ink', 'quietInk', 'light', 'settled', 'watch', 'move', 'reach'] as const)(
    '%s stands at 4.5 : 1 on the ground and on the water',
    (name) => {
      expect(contrast(palette[name], palette.ground)).toBeGreaterThanOrEqual(4.5);
      expect(contrast(palette[name], palette.water)).toBeGreaterThanOrEqual(4.5);
    },
  );

  it.each([
    ['ink', 'settledTint'],
    ['ink', 'watchTint'],
    ['ink', 'moveTint'],
    ['ground', 'move'],
  ] as const)('%s stands at 4.5 : 1 on %s', (name, under) => {
    expect(contrast(palette[name], palette[under])).toBeGreaterThanOrEqual(4.5);
  });

  it('the water line and the sand stand at 3 : 1', () => {
    for (const name of ['surface', 'sand'] as const)
      for (const under of ['ground', 'water'] as const)
        expect(contrast(palette[name], palette[under])).toBeGreaterThanOrEqual(3);
  });

  it('the edge of the target stands at 3 : 1', () => {
    expect(contrast(palette.targetEdge, palette.ground)).toBeGreaterThanOrEqual(3);
    expect(contrast(palette.targetEdge, palette.target)).toBeGreaterThanOrEqual(3);
  });
});

describe.each(Object.entries(SEEN))('%s', (_, seen) => {
  it('greys stay grey', () => {
    for (const row of seen) expect(row[0] + row[1] + row[2]).toBeCloseTo(1, 5);
  });

  it('readings and trend are far apart: 20 units of CIELAB, ten times what is just noticed', () => {
    expect(difference(palette.reading, palette.trend, seen)).toBeGreaterThan(20);
  });

  it.each([
    ['settled', 'watch'],
    ['settled', 'move'],
    ['watch', 'move'],
  ] as const)('%s and %s are far apart', (one, other) => {
    expect(difference(palette[one], palette[other], seen)).toBeGreaterThan(20);
  });

  it('target and ground differ, besides the edge line', () => {
    expect(difference(palette.target, palette.ground, seen)).toBeGreaterThan(5);
  });
});
