import { Problem } from '../problem.ts';
import { say } from '../wording/say.ts';
import { radiusCm, type Size } from './shape.ts';

/**
 * The inside of a tank measured outside: the glass is taken off twice across, once at the bottom, and nothing at the
 * open top. Curved and slanting fronts are moved in by the thickness at a right angle, which is exact.
 *
 * Check (`geometry`): box 120 x 50 x 50 cm in 1.2 cm glass -> 117.6 x 47.6 x 48.8 cm, 273.2 L; cylinder 60 x 60 in 1 cm
 * -> 58 x 59 cm, 155.9 L. Doubt: a bottom that is thicker than the sides.
 *
 * @param glassCm 0.1 to 10
 * @throws Problem when no room is left.
 */
export function insideOf(size: Size, glassCm: number): Size {
  const inner = shrunk(size, glassCm);
  const lengths = Object.entries(inner).flatMap(([name, value]) =>
    name === 'insetCm' || typeof value !== 'number' ? [] : [value],
  );
  const roomy = inner.shape !== 'quarter round' || inner.sideCm > inner.insetCm;
  if (roomy && lengths.every((length) => length > 0)) return inner;
  throw new Problem(say('tank.glassTooThick'), {
    field: 'glass',
    given: `${glassCm} cm`,
    hint: say('tank.hintGlass'),
  });
}

function shrunk(size: Size, t: number): Size {
  const heightCm = size.heightCm - t;
  switch (size.shape) {
    case 'box':
      return { ...size, lengthCm: size.lengthCm - 2 * t, widthCm: size.widthCm - 2 * t, heightCm };
    case 'cylinder':
      return { ...size, diameterCm: size.diameterCm - 2 * t, heightCm };
    case 'hexagon':
      return { ...size, edgeCm: size.edgeCm - (2 * t) / Math.sqrt(3), heightCm };
    case 'quarter round':
      return { ...size, sideCm: size.sideCm - 2 * t, insetCm: size.insetCm + t, heightCm };
    case 'corner pentagon':
      return { ...size, wallCm: size.wallCm - 2 * t, shortCm: size.shortCm - Math.SQRT2 * t, heightCm };
    case 'bow front': {
      const { lengthCm, endDepthCm, middleDepthCm } = size;
      const radius = radiusCm(lengthCm, middleDepthCm - endDepthCm);
      const half = lengthCm / 2 - t;
      const arcAtEnd = Math.sqrt(Math.max(0, (radius - t) ** 2 - half ** 2));
      return {
        ...size,
        lengthCm: 2 * half,
        endDepthCm: middleDepthCm - radius + arcAtEnd - t,
        middleDepthCm: middleDepthCm - 2 * t,
        heightCm,
      };
    }
  }
}
