import type { Box, Spot } from './scene.ts';
import { cm } from './say.ts';

/** "30 cm from the left, 10 cm from the front, on the sand": what `readSpot` reads back as the same spot. */
export function spotWords({ xCm, yCm, zCm }: Spot): string {
  const up = zCm === 0 ? 'on the sand' : `${cm(zCm)} up`;
  return `${cm(xCm)} from the left, ${cm(yCm)} from the front, ${up}`;
}

/** "left, back, low": the nearest words for a spot, good to a third of the tank. */
export function roughWords({ xCm, yCm, zCm }: Spot, box: Box): string {
  const height = zCm / box.heightCm;
  const up = zCm === 0 ? 'on the sand' : third((height - 1 / 8) / (6 / 8), ['low', 'middle height', 'high']);
  return [
    third(xCm / box.lengthCm, ['left', 'centre', 'right']),
    third(yCm / box.widthCm, ['front', 'middle', 'back']),
    up,
  ].join(', ');
}

function third(part: number, names: readonly [string, string, string]): string {
  return names[Math.max(0, Math.min(2, Math.floor(part * 3))) as 0 | 1 | 2];
}
