import type { Box, Placed, Spot } from './scene.ts';

/** About this many steps along the length. */
const STEPS = 14;
/** Heights for corals on rock, as parts of the water. */
const HEIGHTS = [1 / 8, 1 / 4, 3 / 8, 1 / 2, 5 / 8, 3 / 4] as const;
/** A spot on rock is above the sand, cm. */
const LEAST_ROCK_CM = 3;

/** Spots to try, whole cm: sand corals on the bottom, rock corals up to three quarters, clear of the glass. */
export function spotGrid(box: Box, { entry, diameterCm }: Placed): readonly Spot[] {
  const step = Math.max(2, Math.min(box.lengthCm / STEPS, box.widthCm / 4));
  const heights = [
    ...(entry.ground.value === 'rock' ? [] : [0]),
    ...(entry.ground.value === 'sand'
      ? []
      : HEIGHTS.map((part) => Math.max(LEAST_ROCK_CM, Math.round(part * box.heightCm)))),
  ];
  const across = along(box.lengthCm, diameterCm, step);
  const deep = along(box.widthCm, diameterCm, step);
  return [...new Set(heights)].flatMap((zCm) =>
    across.flatMap((xCm) => deep.map((yCm) => ({ xCm, yCm, zCm }))),
  );
}

/** Whole cm along one side, half a width clear of both panes; the middle when there is no more room. */
function along(sideCm: number, diameterCm: number, step: number): readonly number[] {
  const first = Math.ceil(diameterCm / 2);
  const free = Math.floor(sideCm - diameterCm / 2) - first;
  if (free < step) return [Math.round(sideCm / 2)];
  const count = Math.floor(free / step);
  return Array.from({ length: count + 1 }, (_, i) => first + Math.round((i * free) / count));
}
