import { guessedBox, guessedFromL } from '../../core/corals/guessed-box.ts';
import type { Box } from '../../core/corals/scene.ts';
import { readQuantity } from '../../core/quantity/read.ts';

/** The glass of a tank that was only told of, by its water; beyond what one is guessed from, the nearest of these. */
export function saidGlass(volume: string | undefined): Box | undefined {
  if (volume === undefined) return undefined;
  const { value } = readQuantity('volume', volume, { field: 'volume' });
  return guessedBox(Math.min(guessedFromL.max, Math.max(guessedFromL.min, value)));
}

/** What was not known of it, and what was taken for it. */
export function glassRead({ lengthCm, widthCm, heightCm }: Box): string {
  return `the tank taken as ${lengthCm} x ${widthCm} x ${heightCm} cm (a guess): what grows wider than it is deep is left out`;
}
