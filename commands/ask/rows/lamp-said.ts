import type { Frame } from '../../../core/language/frame.ts';
import { met } from '../../../core/language/met.ts';
import type { LampStrength } from '../../../core/corals/light-need.ts';
import type { LampId } from '../../../core/light/lamp.ts';

/** What shines, as it is named. "Blue" says too little: most such lamps mix white in, so every LED stays open. */
export function lampKind({ reading: { scanned } }: Frame): LampId | undefined {
  if (met(scanned, 'gear.ledLamp', 'looks.blue')) return 'led';
  if (met(scanned, 'gear.halide')) return 'halide';
  if (met(scanned, 'gear.fluorescent')) return 'fluorescent';
  return met(scanned, 'places.window') ? 'daylight' : undefined;
}

/** How strong a lamp is, where there is no meter. */
export function lampStrength({ reading: { scanned } }: Frame): LampStrength | undefined {
  if (met(scanned, 'gear.weakLamp')) return 'weak';
  return met(scanned, 'gear.strongLamp') ? 'strong' : undefined;
}
