import { fittingOf } from '../../core/corals/say.ts';
import { shortLimits } from '../short/limits.ts';

/** "Zoas, Palys and 3 more: May hold palytoxin.": the names as far as they fit the line, the words whole. */
export function namedDanger(names: readonly string[], words: string): string {
  return `${fittingOf(names, shortLimits.danger - words.length - 2)}: ${words}`;
}
