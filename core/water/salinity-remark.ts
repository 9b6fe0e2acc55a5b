import { fixed } from '../quantity/format.ts';
import { limitsOf, sideOf, urgentSide } from './limits.ts';
import { asPrinted } from './parameter.ts';

/**
 * What is said in the first line of every answer that has a salinity out of bounds; undefined where it is usual, or off
 * by no more than the instrument can be. `written` is how the member wrote it, where that was on another scale.
 *
 * Check: 27.9 ppt written "1.021" -> "Salinity 1.021 (27.9 ppt) is far too low; 33 to 36 ppt is usual. Act today (/urgent what:salinity crash)."
 */
export function salinityRemark(practicalSalinity: number, written?: string): string | undefined {
  const words = salinityOff(practicalSalinity, written);
  return words !== undefined && isUrgent(practicalSalinity)
    ? `${words} Act today (/urgent what:salinity crash).`
    : words;
}

function isUrgent(practicalSalinity: number): boolean {
  return urgentSide('salinity', asPrinted('salinity', practicalSalinity)) !== undefined;
}

/** The same of a day that is yet to come: nothing is to be done today. */
export function salinityOff(practicalSalinity: number, written?: string): string | undefined {
  const { usual, error = 0 } = limitsOf('salinity');
  const [low, high] = usual;
  const shown = asPrinted('salinity', practicalSalinity);
  const side = sideOf(shown, [low - error, high + error]);
  if (side === undefined) return undefined;
  const ppt = `${fixed(shown, 1)} ppt`;
  const named = written === undefined ? ppt : `${written} (${ppt})`;
  return `Salinity ${named} is ${isUrgent(shown) ? `far too ${side}` : side}; ${low} to ${high} ppt is usual.`;
}
