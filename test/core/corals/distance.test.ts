import { describe, expect, it } from 'vitest';
import { carried, distanceCm, DOWNSTREAM_FACTOR, gapBetween } from '../../../core/corals/distance.ts';
import type { FlowDirection } from '../../../core/corals/scene.ts';
import { placed, spot } from './scenes.ts';

const ball = (id: number, x: number, y: number, z: number, diameterCm = 10) =>
  placed(id, 'torch-coral', spot(x, y, z), { diameterCm });
const disc = (id: number, x: number, y: number, z: number, diameterCm = 20) =>
  placed(id, 'montipora-plating', spot(x, y, z), { diameterCm });

describe('distanceCm', () => {
  // Solid geometry.
  it.each([
    ['two balls side by side', ball(1, 0, 0, 0), ball(2, 30, 0, 0), 20],
    ['two balls, 3-4-5', ball(1, 0, 0, 0), ball(2, 30, 0, 40), 40],
    ['balls that touch', ball(1, 0, 0, 0), ball(2, 10, 0, 0), 0],
    ['balls in one place', ball(1, 5, 5, 5), ball(2, 5, 5, 5), 0],
    ['two level discs side by side', disc(1, 0, 0, 20), disc(2, 50, 0, 20), 30],
    ['a disc straight above another', disc(1, 0, 0, 20), disc(2, 5, 0, 32), 12],
    ['discs apart and one above, 3-4-5', disc(1, 0, 0, 0), disc(2, 50, 0, 40), 50],
    ['a ball under the edge of a disc', disc(1, 0, 0, 30), ball(2, 10, 0, 0), 25],
    ['a ball beside a disc, 3-4-5', disc(1, 0, 0, 40), ball(2, 40, 0, 0), 45],
  ])('%s', (_, a, b, expected) => {
    expect(distanceCm(a, b)).toBeCloseTo(expected, 12);
    expect(distanceCm(b, a)).toBe(distanceCm(a, b));
  });
});

describe('gapBetween', () => {
  const box = { lengthCm: 120, widthCm: 60, heightCm: 48 } as const;

  it('is one number when both spots are in cm', () => {
    expect(gapBetween(ball(1, 0, 0, 0), ball(2, 30, 0, 0), box)).toEqual({
      lowCm: 20,
      cm: 20,
      highCm: 20,
      rough: false,
    });
  });

  it('takes half a third of the length off and on for one spot in words', () => {
    const rough = { ...ball(2, 60, 0, 0), rough: true };
    const { lowCm, cm, highCm } = gapBetween(ball(1, 0, 0, 0), rough, box);
    expect([lowCm, cm]).toEqual([30, 50]);
    // 80 along and 10 across (a sixth of the depth), less two radii; the sand is sure.
    expect(highCm).toBeCloseTo(Math.hypot(80, 10) - 10, 9);
  });
});

describe('carried', () => {
  const left = ball(1, 0, 20, 20);
  it.each<[FlowDirection | undefined, readonly [number, number, number], number, number]>([
    ['left to right', [40, 20, 20], DOWNSTREAM_FACTOR, 1],
    ['right to left', [40, 20, 20], 1, DOWNSTREAM_FACTOR],
    ['front to back', [40, 20, 20], 1, 1],
    ['front to back', [0, 60, 20], DOWNSTREAM_FACTOR, 1],
    ['back to front', [0, 60, 20], 1, DOWNSTREAM_FACTOR],
    // 45 degrees is along, 63 degrees (tan = 2) is across.
    ['left to right', [40, 60, 20], DOWNSTREAM_FACTOR, 1],
    ['left to right', [20, 60, 20], 1, 1],
    ['changing', [40, 20, 20], 1, 1],
    [undefined, [40, 20, 20], 1, 1],
    ['left to right', [0, 20, 20], 1, 1],
  ])('%s to %j', (flow, [x, y, z], there, back) => {
    const other = ball(2, x, y, z);
    expect(carried(left, other, flow)).toBe(there);
    expect(carried(other, left, flow)).toBe(back);
  });
});
