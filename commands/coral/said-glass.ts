import { guessedBox } from '../../core/corals/guessed-box.ts';
import type { Box } from '../../core/corals/scene.ts';
import { readQuantity } from '../../core/quantity/read.ts';

/** Litres that a guessed glass is made from; beyond them the nearest of these, for it is only a guess. */
const LITRES = { least: 1, most: 20_000 } as const;

/** The glass of a tank that was only told of, by its water. */
export function saidGlass(volume: string | undefined): Box | undefined {
  if (volume === undefined) return undefined;
  const { value } = readQuantity('volume', volume, { field: 'volume' });
  return guessedBox(Math.min(LITRES.most, Math.max(LITRES.least, value)));
}

/** What was not known of it, and what was taken for it. */
export function glassRead({ lengthCm, widthCm, heightCm }: Box): string {
  return `the tank taken as ${lengthCm} x ${widthCm} x ${heightCm} cm (a guess): what grows wider than it is deep is left out`;
}
