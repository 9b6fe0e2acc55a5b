import { isDangerKind } from '../../core/language/kind-groups.ts';
import type { Frame } from '../../core/language/frame.ts';
import type { Thresholds } from '../../core/language/model-file.ts';
import { met } from '../../core/language/met.ts';

/**
 * A message of danger that tells the size of the tank beside it is no question what the tank holds: the other kinds, as
 * likely as they are among themselves. "bleach spilled into the sump, 120 x 50 x 50 cm" is bleach in a tank.
 */
export function besidesSize(frames: readonly Frame[], { maybeDanger }: Thresholds): readonly Frame[] {
  const [size, next] = frames;
  if (size?.kind !== 'volume' || size.slots.box === undefined) return frames;
  if (!isDangerKind(next?.kind)) return frames;
  if (next.probability < maybeDanger) return frames;
  if (met(size.reading.scanned, 'manner.askMuch')) return frames;
  const left = 1 - size.probability;
  return frames.slice(1).map((frame) => ({ ...frame, probability: frame.probability / left }));
}
