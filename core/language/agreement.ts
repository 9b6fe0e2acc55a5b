import { compoundsFor } from '../dosing/compound.ts';
import { readLogged } from '../log/value.ts';
import { Problem } from '../problem.ts';
import { limitsOf, sideOf } from '../water/limits.ts';
import type { ParameterId } from '../water/parameter.ts';
import type { Kind } from './kinds.ts';
import type { Level, Slots } from './slots.ts';

/** What is left of a kind's probability where what was said speaks against it. Own choice. */
const AGAINST = 0.1;

/** The same of an emergency where only levels were told that are none by themselves: the words may still tell of one. Own choice. */
const QUIETER = 0.15;

const OF_SALINITY: ReadonlySet<Kind> = new Set<Kind>(['salinity-adjust', 'salinity-forecast']);
const OF_SALTS: ReadonlySet<Kind> = new Set<Kind>(['dose-amount', 'dose-daily', 'dose-use']);

/**
 * The grammar of a kind against what a message says: a salinity is not adjusted where only other levels were told, and no
 * salt is dosed for a level that salts do not raise. An emergency is less likely where a message tells of nitrate, calcium
 * and the like alone, by name (`named`), or of a tank that is as warm as usual. 1 where nothing speaks against it.
 */
export function agreement(kind: Kind, { levels = [], of }: Slots, named: readonly ParameterId[]): number {
  if (levels.length === 0) return 1;
  if (OF_SALINITY.has(kind) && levels.every((level) => level.of !== 'salinity')) return AGAINST;
  if (OF_SALTS.has(kind) && of !== undefined && compoundsFor(of).length === 0) return AGAINST;
  const isHarmless = levels.every(
    (level) => isWarmEnough(level) || (named.includes(level.of) && limitsOf(level.of).urgent === undefined),
  );
  if (kind === 'urgent-water' && isHarmless) return QUIETER;
  return 1;
}

/** The tank is as warm as it should be. */
function isWarmEnough({ of, part, text }: Level): boolean {
  if (of !== 'temperature' || part !== 'now') return false;
  try {
    return sideOf(readLogged(of, text, of).value, limitsOf(of).usual) === undefined;
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
    return false;
  }
}
