import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { insideOf } from '../../../core/tank/glass.ts';
import { capacityL, floorCm2, radiusCm, type Size } from '../../../core/tank/shape.ts';
import { problemOf } from '../../commands/text.ts';
import { anySize } from './sizes.ts';

describe('insideOf', () => {
  it('a box loses the glass twice across and once at the bottom', () => {
    const outside: Size = { shape: 'box', lengthCm: 120, widthCm: 50, heightCm: 50 };
    const inside = insideOf(outside, 1.2);
    expect(inside).toMatchObject({ lengthCm: 117.6, widthCm: 47.6, heightCm: 48.8 });
    expect(capacityL(inside)).toBeCloseTo(273.17, 2);
  });

  it('a cylinder: (58/2)2 pi x 59 = 155.88 L', () => {
    expect(capacityL(insideOf({ shape: 'cylinder', diameterCm: 60, heightCm: 60 }, 1))).toBeCloseTo(
      155.88,
      2,
    );
  });

  it.each<{ name: string; outside: Size; holds: (x: number, y: number) => boolean; box: number }>([
    {
      name: 'quarter round: 2 cm from both walls and from the arc',
      outside: { shape: 'quarter round', sideCm: 60, insetCm: 0, heightCm: 50 },
      holds: (x, y) => x > 2 && y > 2 && Math.hypot(x, y) < 58,
      box: 60,
    },
    {
      name: 'corner pentagon: 2 cm from every side',
      outside: { shape: 'corner pentagon', wallCm: 60, shortCm: 25, heightCm: 50 },
      holds: (x, y) => x > 2 && y > 2 && x < 58 && y < 58 && (85 - x - y) / Math.SQRT2 > 2,
      box: 60,
    },
    {
      name: 'hexagon: 2 cm from all six sides',
      outside: { shape: 'hexagon', edgeCm: 30, heightCm: 50 },
      holds: (x, y) =>
        [0, 60, 120].every(
          (deg) =>
            Math.abs(
              (x - 30) * Math.sin((deg * Math.PI) / 180) - (y - 30) * Math.cos((deg * Math.PI) / 180),
            ) <
            15 * Math.sqrt(3) - 2,
        ),
      box: 60,
    },
    {
      name: 'bow front: 2 cm from back, ends and arc',
      outside: { shape: 'bow front', lengthCm: 60, endDepthCm: 30, middleDepthCm: 40, heightCm: 50 },
      holds: (x, y) =>
        x > 2 && x < 58 && y > 2 && Math.hypot(x - 30, y - (40 - radiusCm(60, 10))) < radiusCm(60, 10) - 2,
      box: 60,
    },
  ])('$name, counted on a grid of 1 mm', ({ outside, holds, box }) => {
    const step = 0.1;
    let cells = 0;
    for (let x = step / 2; x < box; x += step)
      for (let y = step / 2; y < box; y += step) if (holds(x, y)) cells += 1;
    const counted = cells * step * step;
    expect(Math.abs(floorCm2(insideOf(outside, 2)) / counted - 1)).toBeLessThan(0.002);
  });

  it('the inside is never larger than the outside, and no glass takes nothing off', () => {
    fc.assert(
      fc.property(anySize, fc.double({ min: 0.2, max: 2, noNaN: true }), (size, glassCm) => {
        const inside = capacityL(insideOf(size, glassCm));
        expect(inside).toBeGreaterThan(0);
        expect(inside).toBeLessThan(capacityL(size));
        expect(capacityL(insideOf(size, 1e-9))).toBeCloseTo(capacityL(size), 4);
      }),
    );
  });

  it('refuses glass that leaves no room', () => {
    const small: Size = { shape: 'box', lengthCm: 15, widthCm: 10, heightCm: 15 };
    expect(problemOf(() => insideOf(small, 5)).field).toBe('glass');
    const corner: Size = { shape: 'quarter round', sideCm: 15, insetCm: 0, heightCm: 15 };
    expect(problemOf(() => insideOf(corner, 6)).field).toBe('glass');
  });
});
