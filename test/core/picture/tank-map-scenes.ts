import { corals } from '../../../core/corals/coral-list.ts';
import type { Box, LightPoint, Placed, Scene } from '../../../core/corals/scene.ts';

interface Strewn {
  readonly count: number;
  readonly points?: number;
  readonly box?: Box;
  readonly rough?: (index: number) => boolean;
}

/** Invented corals of many kinds and readings, the same each time, strewn over a tank with no thought. */
export function strewn({ count, points = 0, box = wide, rough = () => false }: Strewn): Scene {
  const { lengthCm, widthCm, heightCm } = box;
  const spot = (i: number, x: number, y: number, z: number) => ({
    xCm: lengthCm * ((i * x) % 1),
    yCm: widthCm * ((i * y) % 1),
    zCm: heightCm * 0.8 * ((i * z) % 1),
  });
  const placed = Array.from({ length: count }, (_, i): Placed => {
    const entry = corals[(i * 37) % corals.length];
    if (entry === undefined) throw new Error('no corals');
    return {
      id: i + 1,
      entry,
      label: entry.names.common[0],
      spot: spot(i + 1, 0.618, 0.414, 0.732),
      rough: rough(i),
      diameterCm: Math.min(widthCm / 4, 4 + ((i * 7) % 10)),
      origin: 'unknown',
    };
  });
  const light = Array.from({ length: points }, (_, i): LightPoint => {
    const at = spot(i + 1, 0.732, 0.618, 0.414);
    return { ...at, id: i + 1, ppfd: 60 + Math.round((300 * at.zCm) / heightCm), atMs: i };
  });
  return { box, boxGuessed: false, corals: placed, light, flow: 'left to right' };
}

/** A wide tank, cm. */
export const wide = { lengthCm: 180, widthCm: 70, heightCm: 60 } as const;
