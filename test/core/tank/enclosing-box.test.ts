import { expect, it } from 'vitest';
import { enclosingBox } from '../../../core/tank/enclosing-box.ts';
import { insideOf } from '../../../core/tank/glass.ts';
import type { Size } from '../../../core/tank/shape.ts';
import { problemOf } from '../../commands/text.ts';

/** Plane geometry; water 3 cm below the rim where not said: common practice, no source. */
it.each<[Size, number | undefined, readonly number[]]>([
  [{ shape: 'box', lengthCm: 120, widthCm: 50, heightCm: 50 }, 46, [120, 50, 46]],
  [{ shape: 'box', lengthCm: 120, widthCm: 50, heightCm: 50 }, undefined, [120, 50, 47]],
  [insideOf({ shape: 'box', lengthCm: 120, widthCm: 50, heightCm: 50 }, 1.2), 46, [117.6, 47.6, 46]],
  [{ shape: 'cylinder', diameterCm: 60, heightCm: 60 }, undefined, [60, 60, 57]],
  [{ shape: 'hexagon', edgeCm: 30, heightCm: 60 }, 50, [60, 30 * Math.sqrt(3), 50]],
  [{ shape: 'bow front', lengthCm: 120, endDepthCm: 40, middleDepthCm: 50, heightCm: 60 }, 50, [120, 50, 50]],
  [{ shape: 'quarter round', sideCm: 60, insetCm: 0, heightCm: 50 }, 45, [60, 60, 45]],
  [{ shape: 'corner pentagon', wallCm: 90, shortCm: 40, heightCm: 60 }, 50, [90, 90, 50]],
])('%o with water to %s is within %o', (size, waterCm, sides) => {
  const { lengthCm, widthCm, heightCm } = enclosingBox(size, waterCm);
  for (const [i, side] of [lengthCm, widthCm, heightCm].entries()) expect(side).toBeCloseTo(sides[i] ?? 0, 9);
});

it('refuses a water line above the rim', () => {
  const size = { shape: 'box', lengthCm: 120, widthCm: 50, heightCm: 50 } as const;
  expect(problemOf(() => enclosingBox(size, 51)).field).toBe('height');
});
