import type { Level, Slots } from '../../../core/language/slots.ts';
import { parameter, type ParameterId } from '../../../core/water/parameter.ts';

/** The levels of one parameter, in the order they were said: of these parts, or of all. */
export function levelsOf(
  { levels = [] }: Slots,
  of: ParameterId,
  ...parts: readonly Level['part'][]
): readonly Level[] {
  return levels.filter((level) => level.of === of && (parts.length === 0 || parts.includes(level.part)));
}

/** Two readings of what a message is about, the earlier first: also where both are told as if they were of now. */
export function readTwice(slots: Slots): { readonly was: string; readonly now: string } | undefined {
  if (slots.of === undefined) return undefined;
  const read = levelsOf(slots, slots.of, 'was', 'now');
  const [first, last] = [slots.was ?? read[0]?.text, slots.now ?? read.at(-1)?.text];
  return read.length < 2 || first === undefined || last === undefined ? undefined : { was: first, now: last };
}

/** Levels of other parameters than those an answer is about, as the lines that say they were not used. */
export function notUsedOf({ levels = [] }: Slots, used: readonly ParameterId[]): readonly string[] {
  return levels
    .filter(({ of }) => !used.includes(of))
    .map(({ of, text }) => `not used: ${parameter(of).label} ${text}`);
}
