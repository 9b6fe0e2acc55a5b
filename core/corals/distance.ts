import type { FormKind } from './entry.ts';
import type { Box, FlowDirection, Placed } from './scene.ts';

/** Shapes that are wide and low; everything else is taken as a ball. From memory of how they grow. */
const flat: ReadonlySet<FormKind> = new Set(['plating', 'table', 'encrusting', 'mat', 'free-living', 'disc']);

/** From edge to edge, cm. `low` and `high` are the same as `cm` unless a spot was said in words. */
export interface Gap {
  readonly lowCm: number;
  readonly cm: number;
  readonly highCm: number;
  /** A spot was said in words, so the gap is only about right. */
  readonly rough: boolean;
}

/** How far off a spot can be, cm on each axis: half a third of the length and depth, half a step of the height. */
export function spotErrorCm(
  coral: Pick<Placed, 'rough' | 'spot'>,
  box: Box,
): readonly [number, number, number] {
  if (!coral.rough) return [0, 0, 0];
  return [box.lengthCm / 6, box.widthCm / 6, coral.spot.zCm === 0 ? 0 : box.heightCm / 8];
}

/**
 * Distance between two living bodies, edge to edge, cm; 0 when they touch. A body is a level disc or a ball, by its
 * width, with its middle at the coral's spot. Exact for two balls, two level discs and one of each. Symmetric to the
 * bit: every step is the same for (a, b) and (b, a). Check: two balls of 10 cm with middles 30 cm apart -> 20 cm.
 *
 * Doubt: a head stands above its spot and a branching colony is no ball; the width is taken as when open by day.
 */
export function distanceCm(a: Placed, b: Placed): number {
  return gapOf(a, b, Math.abs(a.spot.xCm - b.spot.xCm), Math.abs(a.spot.yCm - b.spot.yCm), rise(a, b));
}

/** The distance with the least and the most it can be where a spot was said in words. */
export function gapBetween(a: Placed, b: Placed, box: Box): Gap {
  const cm = distanceCm(a, b);
  if (!a.rough && !b.rough) return { lowCm: cm, cm, highCm: cm, rough: false };
  const [ax, ay, az] = spotErrorCm(a, box);
  const [bx, by, bz] = spotErrorCm(b, box);
  const dx = Math.abs(a.spot.xCm - b.spot.xCm);
  const dy = Math.abs(a.spot.yCm - b.spot.yCm);
  const dz = rise(a, b);
  return {
    lowCm: gapOf(a, b, nearer(dx, ax + bx), nearer(dy, ay + by), nearer(dz, az + bz)),
    cm,
    highCm: gapOf(a, b, dx + (ax + bx), dy + (ay + by), dz + (az + bz)),
    rough: true,
  };
}

function nearer(deltaCm: number, errorCm: number): number {
  return Math.max(0, deltaCm - errorCm);
}

function gapOf(a: Placed, b: Placed, dx: number, dy: number, dz: number): number {
  const [flatA, flatB] = [isFlat(a), isFlat(b)];
  const discs = (flatA ? a.diameterCm : 0) / 2 + (flatB ? b.diameterCm : 0) / 2;
  const balls = (flatA ? 0 : a.diameterCm) / 2 + (flatB ? 0 : b.diameterCm) / 2;
  const level = Math.max(0, Math.sqrt(dx * dx + dy * dy) - discs);
  return Math.max(0, Math.sqrt(level * level + dz * dz) - balls);
}

/** Whether a coral is taken as a level disc. */
export function isFlat({ entry }: Placed): boolean {
  return flat.has(entry.form.kinds[0]);
}

/** How much further a sweeper is carried with the water than it reaches by itself: project rule, no source. */
export const DOWNSTREAM_FACTOR = 1.5;

/**
 * What the reach of `from` counts times towards `to`: `DOWNSTREAM_FACTOR` when `to` lies within 60 degrees of where the
 * water goes, else 1. A changing or unknown flow carries nothing further.
 */
export function carried(from: Placed, to: Placed, flow: FlowDirection | undefined): number {
  const along = downstreamCm(from, to, flow);
  if (along <= 0) return 1;
  const dx = to.spot.xCm - from.spot.xCm;
  const dy = to.spot.yCm - from.spot.yCm;
  const dz = to.spot.zCm - from.spot.zCm;
  return 4 * along * along >= dx * dx + dy * dy + dz * dz ? DOWNSTREAM_FACTOR : 1;
}

function downstreamCm(from: Placed, to: Placed, flow: FlowDirection | undefined): number {
  switch (flow) {
    case 'left to right':
      return to.spot.xCm - from.spot.xCm;
    case 'right to left':
      return from.spot.xCm - to.spot.xCm;
    case 'front to back':
      return to.spot.yCm - from.spot.yCm;
    case 'back to front':
      return from.spot.yCm - to.spot.yCm;
    case 'changing':
    case undefined:
      return 0;
  }
}

function rise(a: Placed, b: Placed): number {
  return Math.abs(a.spot.zCm - b.spot.zCm);
}
