import { met } from './met.ts';
import type { Scanned } from './tokens.ts';

/** "since the windows been shut", "we battened down": the room is closed to the air outside. */
export function isRoomShut(scanned: Scanned): boolean {
  return met(scanned, 'places.shutRoom') || (met(scanned, 'places.opening') && met(scanned, 'manner.shuts'));
}
