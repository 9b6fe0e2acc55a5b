import * as fc from 'fast-check';
import type { Size } from '../../../core/tank/shape.ts';

const cm = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Tanks of every shape a hobbyist may have, inside or outside. */
export const anySize: fc.Arbitrary<Size> = fc.oneof(
  fc.record({
    shape: fc.constant('box' as const),
    lengthCm: cm(20, 300),
    widthCm: cm(20, 150),
    heightCm: cm(20, 120),
  }),
  fc.record({ shape: fc.constant('cylinder' as const), diameterCm: cm(20, 200), heightCm: cm(20, 120) }),
  fc.record({ shape: fc.constant('hexagon' as const), edgeCm: cm(15, 80), heightCm: cm(20, 120) }),
  fc.record({
    shape: fc.constant('quarter round' as const),
    sideCm: cm(25, 150),
    insetCm: fc.constant(0),
    heightCm: cm(20, 120),
  }),
  fc
    .record({ wallCm: cm(40, 150), share: cm(0.3, 0.9), heightCm: cm(20, 120) })
    .map(({ wallCm, share, heightCm }) => ({
      shape: 'corner pentagon' as const,
      wallCm,
      shortCm: wallCm * share,
      heightCm,
    })),
  fc
    .record({ lengthCm: cm(40, 300), endDepthCm: cm(25, 100), bow: cm(0.05, 0.5), heightCm: cm(20, 120) })
    .map(({ bow, ...rest }) => ({
      ...rest,
      shape: 'bow front' as const,
      middleDepthCm: rest.endDepthCm + bow * rest.lengthCm,
    })),
);
