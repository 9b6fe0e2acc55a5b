import type { Box, Scene, Spot } from '../../core/corals/scene.ts';
import { roughWords, spotWords } from '../../core/corals/spot-words.ts';
import { fixed } from '../../core/quantity/format.ts';
import { boxWords } from '../tank/glass.ts';

/** Where a coral stands, in words and cm. */
export function spotSaid(
  { spot, rough }: { readonly spot: Spot; readonly rough: boolean },
  box: Box,
): string {
  return rough ? `${roughWords(spot, box)} (about ${spotWords(spot)})` : spotWords(spot);
}

/** "30 x 10 x 0 cm": a spot short enough for a button, which `readSpot` reads back. */
export function spotShort({ xCm, yCm, zCm }: Spot): string {
  return `${[xCm, yCm, zCm].map((side) => fixed(side, 1)).join(' x ')} cm`;
}

/** Said wherever spots are judged in a glass nobody gave. */
export function guessedCautions({ boxGuessed, box }: Scene): readonly string[] {
  if (!boxGuessed) return [];
  return [
    `I do not know your glass: ${boxWords(box)} is a guess from the volume, so all distances are too. Give it with /tank edit size:`,
  ];
}
