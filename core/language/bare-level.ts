import { slotsOf, type Case } from './case.ts';
import { levelParts } from './fill-slots.ts';
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
 * hour on the 9th: 8.0". A number that is nowhere near what was told is left alone.
 */
export function withSpoken<F extends Frame>(frame: F, { moments }: Case): F {
  const { slots, rest } = frame;
  if (slots.levels !== undefined || slots.of !== undefined) return frame;
  const spoken =
    moments.slice(-NEAR).findLast((moment) => moment.slots.levels !== undefined)?.slots.levels ?? [];
  const [before, other] = [...new Set(spoken.map(({ of }) => of))];
  if (before === undefined || other !== undefined) return frame;
  const told = spoken.map(({ value }) => value);
  const bare = rest.filter(
    (one) => isBareLevel(one) && told.some((value) => isNear(one.number.value, value)),
  );
  if (bare.length === 0) return frame;
  const levels = bare.map((one): Level => ({
    of: before,
    part: levelParts.find((name) => name === one.part) ?? 'now',
    text: one.number.number,
    value: one.number.value,
    ...momentBeside(one, frame.reading.said),
  }));
  return {
    ...frame,
    get cards() {
      return frame.cards;
    },
    slots: { ...slots, ...slotsOf(levels, before), of: before, levels },
    rest: rest.filter((one) => !bare.includes(one)),
  };
}

function isBareLevel({ part, of, number }: Said): boolean {
  return of === 'nothing' && number.kinds.length === 0 && levelParts.some((name) => name === part);
}

function isNear(one: number, other: number): boolean {
  return one > 0 && other > 0 && one <= FACTOR * other && other <= FACTOR * one;
}
