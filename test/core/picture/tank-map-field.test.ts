import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lightAt } from '../../../core/corals/par-field.ts';
import type { LightPoint } from '../../../core/corals/scene.ts';
import { lightSlice } from '../../../core/picture/tank-map-field.ts';
import { real } from '../corals/real.ts';
import { reading, spot } from '../corals/scenes.ts';

const box = { lengthCm: 100, widthCm: 40, heightCm: 40 } as const;

/**
 * Two readings weighed by one over the square of the distance (Shepard 1968, ACM National Conference, 517-524): the mean
 * of the two lies where both are as far, on the plane in the middle between them.
 */
describe('two readings, 100 and 300 PAR, 20 cm apart', () => {
  const two = [reading(1, spot(40, 20, 20), 100), reading(2, spot(60, 20, 20), 300)];

  it.each(['above', 'front'] as const)('the line of 200 PAR stands half way, from %s', (side) => {
    const slice = lightSlice(two, box, side);
    expect(slice?.atCm).toBe(20);
    const middle = slice?.lines.filter(({ ppfd }) => ppfd === 200) ?? [];
    expect(middle.length).toBeGreaterThan(0);
    for (const { spots } of middle) for (const { xCm } of spots) expect(xCm).toBeCloseTo(50, 6);
  });

  it('the lines are the round values between them', () => {
    const values = new Set(lightSlice(two, box, 'above')?.lines.map(({ ppfd }) => ppfd));
    expect([...values].sort((a, b) => a - b)).toEqual([150, 200, 250]);
  });
});

it.each([
  ['no reading', []],
  ['one reading', [reading(1, spot(40, 20, 20), 100)]],
  ['readings that are all alike', [reading(1, spot(40, 20, 20), 90), reading(2, spot(55, 20, 20), 90)]],
] as const)('%s makes no line', (_, light) => {
  for (const side of ['above', 'front'] as const)
    expect(lightSlice(light, box, side)?.lines ?? []).toEqual([]);
});

it('cuts where most readings are', () => {
  const light = [10, 12, 11, 38].map((zCm, i) => reading(i + 1, spot(20 + 10 * i, 10 + i, zCm), 50 + 30 * i));
  expect(lightSlice(light, box, 'above')?.atCm).toBeLessThan(13);
});

it('takes the newest of several at one spot', () => {
  const old = reading(1, spot(40, 20, 20), 500, 0);
  const two = [reading(2, spot(40, 20, 20), 100, 9), reading(3, spot(60, 20, 20), 200, 9)];
  expect(lightSlice([old, ...two], box, 'above')).toEqual(lightSlice(two, box, 'above'));
});

const light = fc
  .array(fc.record({ x: real(0, 300), y: real(0, 60), z: real(0, 60), ppfd: real(5, 900) }), {
    maxLength: 25,
  })
  .map((all) => all.map(({ x, y, z, ppfd }, i): LightPoint => reading(i + 1, spot(x, y, z), ppfd)));

it('draws nothing far from every reading, and on each line the light it names', () => {
  const wide = { lengthCm: 300, widthCm: 60, heightCm: 60 };
  // One step of the grid, along its diagonal: 300 x 60 cm over 700 cells.
  const stepCm = 5.1 * Math.SQRT2;
  fc.assert(
    fc.property(light, fc.constantFrom('above', 'front'), (points, side) => {
      for (const { ppfd, spots } of lightSlice(points, wide, side)?.lines ?? []) {
        for (const at of spots) {
          const here = lightAt(points, at);
          expect(here?.nearestCm).toBeLessThanOrEqual(20 + stepCm);
          const around = points.filter((point) => Math.abs(point.xCm - at.xCm) <= 30 + stepCm);
          expect(ppfd).toBeGreaterThanOrEqual(Math.min(...around.map((point) => point.ppfd)) - 1e-6);
          expect(ppfd).toBeLessThanOrEqual(Math.max(...around.map((point) => point.ppfd)) + 1e-6);
        }
      }
    }),
    { numRuns: 60 },
  );
});
