/**
 * Shapes of aquaria as plane figures pulled up to a height. All lengths in centimetres, areas in cm2.
 * `lengthCm` runs along the wall, depths from front to back.
 */
export type Size =
  | {
      readonly shape: 'box';
      readonly lengthCm: number;
      readonly widthCm: number;
      readonly heightCm: number;
    }
  | { readonly shape: 'cylinder'; readonly diameterCm: number; readonly heightCm: number }
  | { readonly shape: 'hexagon'; readonly edgeCm: number; readonly heightCm: number }
  | BowFront
  | QuarterRound
  | CornerPentagon;

export const shapes = [
  'box',
  'cylinder',
  'bow front',
  'quarter round',
  'corner pentagon',
  'hexagon',
] as const;
export type Shape = (typeof shapes)[number];

/** A box whose front is an arc of a circle, deepest in the middle. */
interface BowFront {
  readonly shape: 'bow front';
  readonly lengthCm: number;
  readonly endDepthCm: number;
  readonly middleDepthCm: number;
  readonly heightCm: number;
}

/** A quarter of a cylinder: two equal back walls at a right angle, a round front. */
interface QuarterRound {
  readonly shape: 'quarter round';
  readonly sideCm: number;
  /** Glass already taken off: the round front is an arc about a corner this far outside both walls; 0 outside. */
  readonly insetCm: number;
  readonly heightCm: number;
}

/** Two back walls at a right angle, a short side at the end of each, a slanting front between them. */
interface CornerPentagon {
  readonly shape: 'corner pentagon';
  readonly wallCm: number;
  readonly shortCm: number;
  readonly heightCm: number;
}

/**
 * Area of the floor, cm2. Plane geometry (`geometry`): l w; pi d2/4; l w + circular segment; quarter disc; square less
 * half the square cut off; 3 sqrt(3)/2 of the square of a side of a regular hexagon.
 *
 * Check: box 120 x 50 -> 6000; cylinder 60 -> 2827.43; bow front 120, 40 at the ends, 50 in the middle -> 4800 + 804.43
 * (segment of chord 120, rise 10); quarter round 60 -> 2827.43; pentagon 90, 40 -> 8100 - 1250 = 6850;
 * hexagon 30 -> 2338.27.
 * Doubt: braces, weirs and overflow boxes inside are not taken off.
 */
export function floorCm2(size: Size): number {
  switch (size.shape) {
    case 'box':
      return size.lengthCm * size.widthCm;
    case 'cylinder':
      return (Math.PI * size.diameterCm ** 2) / 4;
    case 'bow front':
      return (
        size.lengthCm * size.endDepthCm + segmentCm2(size.lengthCm, size.middleDepthCm - size.endDepthCm)
      );
    case 'quarter round':
      return quarterCm2(size.sideCm + size.insetCm, size.insetCm);
    case 'corner pentagon':
      return size.wallCm ** 2 - (size.wallCm - size.shortCm) ** 2 / 2;
    case 'hexagon':
      return ((3 * Math.sqrt(3)) / 2) * size.edgeCm ** 2;
  }
}

/** Litres to the rim: floor x height, 1 L = 1000 cm3. 120 x 50 x 50 cm -> 300 L; 160 x 80 x 55 cm -> 704 L. */
export function capacityL(size: Size): number {
  return (floorCm2(size) * size.heightCm) / 1000;
}

/**
 * Radius of the circle through the ends of a chord with a rise in the middle: h/2 + c2/(8 h).
 * Check: chord 120, rise 10 -> 185.
 */
export function radiusCm(chordCm: number, riseCm: number): number {
  return riseCm / 2 + chordCm ** 2 / (8 * riseCm);
}

/** Circular segment: R2 acos((R-h)/R) - (R-h) sqrt(2 R h - h2). A half disc for h = c/2: chord 20, rise 10 -> 157.08. */
function segmentCm2(chordCm: number, riseCm: number): number {
  if (riseCm <= 0) return 0;
  const radius = radiusCm(chordCm, riseCm);
  const short = radius - riseCm;
  return radius ** 2 * Math.acos(short / radius) - short * (chordCm / 2);
}

/** Part of a quarter disc of radius R that lies further than `insetCm` from both of its straight sides. */
function quarterCm2(radius: number, inset: number): number {
  const reach = Math.sqrt(radius ** 2 - inset ** 2);
  const angle = Math.PI / 2 - 2 * Math.asin(inset / radius);
  return (radius ** 2 * angle) / 2 - inset * (reach - inset);
}
