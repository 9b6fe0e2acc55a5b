import { inRange } from '../problem.ts';
import type { Box } from './scene.ts';

/** Litres that a glass is guessed from; own choice. */
export const guessedFromL = { min: 1, max: 20_000 } as const;

/**
 * A plausible inside of a tank of `volumeL` (1 to 20,000 L) when the glass is unknown: twice as long as deep and high.
 * A guess: say so wherever it is used. The proportion is a project rule; net water is less than the full box, so the
 * guess runs a little small. Check: 250 L -> 100 x 50 x 50 cm.
 *
 * @throws Problem outside the range.
 */
export function guessedBox(volumeL: number): Box {
  const depthCm = Math.cbrt((inRange('volume', volumeL, guessedFromL.min, guessedFromL.max, 'L') * 1000) / 2);
  const whole = Math.round(depthCm);
  return { lengthCm: Math.round(2 * depthCm), widthCm: whole, heightCm: whole };
}
