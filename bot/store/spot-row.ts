import type { Spot } from '../../core/corals/scene.ts';
import { length } from './limits.ts';

export const spotColumns = 'x_cm AS xCm, y_cm AS yCm, z_cm AS zCm';

/** @throws Problem when it lies outside any tank. */
export function spotRow({ xCm, yCm, zCm }: Spot): Spot {
  return {
    xCm: length('from the left', xCm, 0),
    yCm: length('from the front', yCm, 0),
    zCm: length('from the bottom', zCm, 0),
  };
}
