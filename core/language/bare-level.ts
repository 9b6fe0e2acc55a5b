import { slotsOf, type Case } from './case.ts';
import { levelParts } from './levels-said.ts';
import { withoutLevels } from './goes-on.ts';
import type { Frame } from './frame.ts';
import { momentBeside } from './moment-beside.ts';
import type { Said } from './said.ts';
import type { Level } from './slots.ts';

/** Messages back to which a parameter is still the one spoken of; own choice. */
const NEAR = 3;
/** A number within this factor of the level told before can be the next reading of it; own choice. */
const FACTOR = 2;

/**
 * A level said without its name, in a case that spoke of one parameter just before: "alk on the 3rd was 8.6", then "same
 * hour on the 9th: 8.0". What a bare number was guessed to be of is no name. A number that is nowhere near what was told is
 * left alone.
 */
export function withSpoken<F extends Frame>(frame: F, { moments }: Case): F {
  const { slots, reading } = frame;
  const isNamed = reading.scanned.names.some(({ class: kind }) => kind === 'parameter');
  const spoken =
    moments.slice(-NEAR).findLast((moment) => moment.slots.levels !== undefined)?.slots.levels ?? [];
  const [of, other] = [...new Set(spoken.map((level) => level.of))];
  if (isNamed || of === undefined || other !== undefined || slots.of === of) return frame;
  const bare = reading.said.filter(
    (one) => isBareLevel(one) && spoken.some(({ value }) => isNear(one.number.value, value)),
  );
  if (bare.length === 0 || bare.length < (slots.levels?.length ?? 0)) return frame;
  const levels = bare.map((one): Level => ({
    of,
    part: levelParts.find((name) => name === one.part) ?? 'now',
    text: one.number.number,
    value: one.number.value,
    ...momentBeside(one, reading.said),
  }));
  return {
    ...frame,
    get cards() {
      return frame.cards;
    },
    slots: { ...withoutLevels(slots), ...slotsOf(levels, of), of, levels },
    rest: frame.rest.filter((one) => !bare.includes(one)),
  };
}

function isBareLevel({ part, number }: Said): boolean {
  return number.kinds.length === 0 && levelParts.some((name) => name === part);
}

function isNear(one: number, other: number): boolean {
  return one > 0 && other > 0 && one <= FACTOR * other && other <= FACTOR * one;
}
