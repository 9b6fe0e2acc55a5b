import type { Box } from '../corals/scene.ts';
import type { Size } from './shape.ts';
import { waterDepth } from './volume.ts';

/**
 * The smallest box round the water of a tank, from the inside of its glass, cm; height to the water line, taken as 3 cm
 * below the rim where it is not known (common practice). Exact for a box. Check: cylinder 60 x 60 -> 60 x 60 x 57 cm.
 *
 * Doubt: in the corners of such a box round another shape there is no water.
 *
 * @throws Problem when the water line is above the rim.
 */
export function enclosingBox(size: Size, waterCm?: number): Box {
  return { ...floorOf(size), heightCm: waterDepth(size.heightCm, waterCm).likely };
}

function floorOf(size: Size): Omit<Box, 'heightCm'> {
  switch (size.shape) {
    case 'box':
      return { lengthCm: size.lengthCm, widthCm: size.widthCm };
    case 'cylinder':
      return { lengthCm: size.diameterCm, widthCm: size.diameterCm };
    case 'hexagon':
      return { lengthCm: 2 * size.edgeCm, widthCm: Math.sqrt(3) * size.edgeCm };
    case 'bow front':
      return { lengthCm: size.lengthCm, widthCm: size.middleDepthCm };
    case 'quarter round':
      return { lengthCm: size.sideCm, widthCm: size.sideCm };
    case 'corner pentagon':
      return { lengthCm: size.wallCm, widthCm: size.wallCm };
  }
}
