import type { Level, Slots } from '../../../core/language/slots.ts';
import { parameter, type ParameterId } from '../../../core/water/parameter.ts';
import { tripletIn } from '../../../core/words/triplet.ts';

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

/** Levels of other parameters than those an answer is about, as an answer names what it did not use. */
export function notUsedOf({ levels = [] }: Slots, used: readonly ParameterId[]): readonly string[] {
  return levels
    .filter(({ of }) => !used.includes(of))
    .map(({ of, text }) => `${parameter(of).label} ${text}`);
}

/** The levels of a message, with those written in one: "450/9.5/1350" is calcium, alkalinity and magnesium. */
export function levelsWritten({ levels = [] }: Slots, text: string): readonly Level[] {
  const found = tripletIn(text);
  if (found === undefined) return levels;
  const inOne = (['calcium', 'alkalinity', 'magnesium'] as const).map((of): Level => {
    const value = found[of];
    return { of, part: 'now', text: of === 'alkalinity' ? `${value} dKH` : String(value), value };
  });
  const isOneOf = (level: Level): boolean =>
    inOne.some(({ of, value }) => of === level.of && value === level.value);
  return [...levels.filter((level) => !isOneOf(level)), ...inOne];
}
