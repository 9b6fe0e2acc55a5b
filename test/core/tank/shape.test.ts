import { describe, expect, it } from 'vitest';
import { capacityL, floorCm2, radiusCm, type Size } from '../../../core/tank/shape.ts';

const box = (lengthCm: number, widthCm: number, heightCm: number): Size => ({
  shape: 'box',
  lengthCm,
  widthCm,
  heightCm,
});

describe('floorCm2', () => {
  it.each([
    { size: box(120, 50, 50), expected: 6000, source: 'l w' },
    { size: { shape: 'cylinder', diameterCm: 60, heightCm: 50 }, expected: 900 * Math.PI, source: 'pi r2' },
    {
      size: { shape: 'quarter round', sideCm: 60, insetCm: 0, heightCm: 50 },
      expected: 900 * Math.PI,
      source: 'pi r2 / 4, r = 60',
    },
    {
      size: { shape: 'corner pentagon', wallCm: 90, shortCm: 40, heightCm: 50 },
      expected: 6850,
      source: 'by hand: 90 x 90 less the triangle 50 x 50 / 2',
    },
    {
      size: { shape: 'hexagon', edgeCm: 30, heightCm: 50 },
      expected: 2338.2686,
      source: 'six equilateral triangles of 30: 6 x 30^2 x sqrt(3)/4',
    },
    {
      size: { shape: 'bow front', lengthCm: 120, endDepthCm: 40, middleDepthCm: 50, heightCm: 50 },
      expected: 4800 + 804.43,
      source:
        'by hand: R = 185, half angle asin(60/185) = 0.330297, 185^2 x 0.3302974 - 60 x 175 = 804.43; the arc summed in strips agrees',
    },
    {
      size: { shape: 'bow front', lengthCm: 20, endDepthCm: 30, middleDepthCm: 40, heightCm: 50 },
      expected: 600 + 50 * Math.PI,
      source: 'the bow is a half disc of radius 10',
    },
  ] satisfies { size: Size; expected: number; source: string }[])(
    '$size.shape -> $expected ($source)',
    ({ size, expected }) => {
      expect(Math.abs(floorCm2(size) - expected)).toBeLessThan(0.01);
    },
  );

  it('a bow front is close to the parabola of the same rise where it is flat (2/3 chord x rise)', () => {
    const bow: Size = {
      shape: 'bow front',
      lengthCm: 200,
      endDepthCm: 40,
      middleDepthCm: 42,
      heightCm: 50,
    };
    expect(floorCm2(bow) - 8000).toBeCloseTo((2 / 3) * 200 * 2, 0);
  });
});

describe('capacityL', () => {
  it.each([
    { size: box(120, 50, 50), expected: 300, source: '1 L = 1000 cm3' },
    { size: box(160, 80, 55), expected: 704, source: '1 L = 1000 cm3' },
    { size: box(100, 40, 50), expected: 200, source: '1 L = 1000 cm3' },
    {
      size: box(36 * 2.54, 18 * 2.54, 18 * 2.54),
      expected: 191.14,
      source: '11,664 in3 x 16.387064 cm3',
    },
  ])('$expected L ($source)', ({ size, expected }) => {
    expect(capacityL(size)).toBeCloseTo(expected, 2);
  });

  it('36 x 18 x 18 in is 50.5 US gallons of 231 in3', () => {
    expect(capacityL(box(36 * 2.54, 18 * 2.54, 18 * 2.54)) / 3.785411784).toBeCloseTo(
      (36 * 18 * 18) / 231,
      9,
    );
  });
});

describe('radiusCm', () => {
  it('chord 120, rise 10 -> 185, and Pythagoras agrees', () => {
    expect(radiusCm(120, 10)).toBeCloseTo(185, 9);
    expect(Math.hypot(60, 175)).toBeCloseTo(185, 9);
  });
});
