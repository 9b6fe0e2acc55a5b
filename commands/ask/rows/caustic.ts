import type { Frame } from '../../../core/language/frame.ts';
import { met } from '../../../core/language/met.ts';

/** Lye and acids, where no salt is named beside them: no amount is given of them, whatever is asked. */
export function isCaustic({ reading: { scanned } }: Frame): boolean {
  const isSalt = scanned.names.some((name) => name.class === 'salt');
  return !isSalt && met(scanned, 'substances.lye', 'poisons.acid');
}
