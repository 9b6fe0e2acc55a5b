import type { Frame } from '../../../core/language/frame.ts';
import { met } from '../../../core/language/met.ts';
import { readableAs } from './readable-as.ts';

/** Shorter than this a length is a spot or a gap, and no tank, cm. Own choice. */
const LEAST_TANK_CM = 30;

/** The water of a tank that a plan is for: said, or that of a glass twice as long as deep and high where its length is. */
export function tankWaterSaid({
  slots: { volume, lengths = [] },
  reading: { scanned },
}: Frame): string | undefined {
  if (volume !== undefined) return readableAs('volume', volume) === undefined ? undefined : volume;
  const lengthCm = readableAs('length', lengths[0] ?? '');
  if (lengthCm === undefined || lengthCm < LEAST_TANK_CM || !met(scanned, 'places.tank')) return undefined;
  // length x (length / 2)^2. Check: 100 cm -> 250 L, as core/corals/guessed-box.ts the other way.
  return `${Math.round(lengthCm ** 3 / 4000)} L`;
}
