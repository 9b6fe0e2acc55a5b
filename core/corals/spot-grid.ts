import type { Box, Placed, Spot } from './scene.ts';

/** About this many steps along the length. */
const STEPS = 14;
/** Heights for corals on rock, as parts of the water: project rule. */
const HEIGHTS = [1 / 8, 1 / 4, 3 / 8, 1 / 2, 5 / 8, 3 / 4] as const;
/** A spot on rock is above the sand, cm: project rule. */
const LEAST_ROCK_CM = 3;

/** Between a coral and the glass, so that it can be cleaned, cm: project rule. */
const GLASS_CM = 1;
/** So high, as a part of the water, rock may be thought to stand in the front, middle and back third: project rule. */
const ROCK_SLOPE = [1 / 4, 1 / 2, 3 / 4] as const;
/** Rock stands so far round a coral that stands on it, cm: project rule. */
const ROCK_ROUND_CM = 12;

/**
 * Spots to try, whole cm: sand corals on the bottom, rock corals up to three quarters, clear of the glass. Where the rock
 * stands is not known: it is thought to rise to the back, and to stand under the others that live on rock. So no coral is
 * proposed in open water at the front glass.
 */
export function spotGrid(
  box: Box,
  { entry, diameterCm }: Placed,
  others: readonly Placed[] = [],
): readonly Spot[] {
  const step = Math.max(2, Math.min(box.lengthCm / STEPS, box.widthCm / 4));
  const heights = [
    ...(entry.ground.value === 'rock' ? [] : [0]),
    ...(entry.ground.value === 'sand'
      ? []
      : HEIGHTS.map((part) => Math.max(LEAST_ROCK_CM, Math.round(part * box.heightCm)))),
  ];
  const across = along(box.lengthCm, diameterCm, step);
  const deep = along(box.widthCm, diameterCm, step);
  const rockCorals = others.filter((other) => other.entry.ground.value === 'rock');
  return [...new Set(heights)]
    .flatMap((zCm) => across.flatMap((xCm) => deep.map((yCm) => ({ xCm, yCm, zCm }))))
    .filter((spot) => spot.zCm <= slopeCm(box, spot) || rockCorals.some((other) => isBeside(other, spot)));
}

function slopeCm({ widthCm, heightCm }: Box, { yCm }: Spot): number {
  const third = Math.min(2, Math.floor((3 * yCm) / widthCm));
  return Math.max(LEAST_ROCK_CM, Math.ceil((ROCK_SLOPE[third] ?? 1 / 4) * heightCm));
}

function isBeside({ spot }: Placed, { xCm, yCm, zCm }: Spot): boolean {
  return zCm <= spot.zCm && Math.hypot(spot.xCm - xCm, spot.yCm - yCm) <= ROCK_ROUND_CM;
}

/** Whole cm along one side, clear of both panes; the middle when there is no more room. */
function along(sideCm: number, diameterCm: number, step: number): readonly number[] {
  const first = Math.ceil(diameterCm / 2) + GLASS_CM;
  const free = Math.floor(sideCm - diameterCm / 2) - GLASS_CM - first;
  if (free < step) return [Math.round(sideCm / 2)];
  const count = Math.floor(free / step);
  return Array.from({ length: count + 1 }, (_, i) => first + Math.round((i * free) / count));
}
