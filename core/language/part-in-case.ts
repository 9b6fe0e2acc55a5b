import { known, type Case } from './case.ts';
import { parameterOf } from './levels-said.ts';
import { met } from './met.ts';
import type { Reading } from './reading.ts';
import { inUnit, type Said } from './said.ts';
import type { Level } from './slots.ts';
import { placeOf } from './tokens.ts';

/** Words for a level that is meant to be, stronger than "need" and "should". Grammar: nothing is learnt of them. */
const AIMS: ReadonlySet<string> = new Set('goal target want wanna aim aiming would happy'.split(' '));
/** "up to", "back to", "down to" right before a number. */
const UP_TO: ReadonlySet<string> = new Set(['up', 'back', 'down']);
/** Words for other water than the tank's. */
const OTHER_WATER: ReadonlySet<string> = new Set(
  'mix well tap barrel drum bucket bin tub canister batch bag'.split(' '),
);
/** Below this a salinity is a difference, and no tank's: 10 ppt. Own choice. */
const LEAST_PPT = 10;
/** Less than this is no light of a lit tank; own choice. */
const LEAST_LUX = 500;
const MOVES: ReadonlySet<string> = new Set('up down higher lower more less'.split(' '));

/**
 * The part of a level where its case tells more than its own message: what the tank reads was told already, so another
 * number that is aimed at is what it should read, one of the mix, the well or the barrel is other water's, and "one ppt up"
 * is a change.
 */
export function withParts(reading: Reading, before: Case): Reading {
  const { levels = [] } = known(before);
  const isLux = before.moments.some(({ kind }) => kind === 'lux');
  const all = reading.said.map((one): Said => {
    if (isLux && isBareLux(one))
      return inUnit({ ...one, part: 'light', of: 'light' }, 'lux', ['illuminance']);
    const part = partOf(one, reading, levels);
    return part === one.part ? one : { ...one, part };
  });
  return { ...reading, said: all };
}

/** A bare number that is of nothing, in a story about a meter of lux. */
function isBareLux({ part, of, number: { kinds, value } }: Said): boolean {
  return (part === 'now' || part === 'was') && of === 'nothing' && kinds.length === 0 && value >= LEAST_LUX;
}

function partOf(one: Said, { scanned }: Reading, levels: readonly Level[]): Said['part'] {
  const of = parameterOf(one.of);
  const { tokens } = scanned;
  if (of === undefined || (one.part !== 'now' && one.part !== 'wanted')) return one.part;
  const at = placeOf(tokens, one.number);
  const words = tokens.map(({ word }) => word);
  const next = words.slice(at + 1, at + 3);
  if (of === 'salinity' && one.number.value < LEAST_PPT && next.some((word) => MOVES.has(word)))
    return 'change';
  const told = levels.findLast((level) => level.of === of && level.part === 'now');
  if (told === undefined || told.value === one.number.value) return one.part;
  const isTo = words[at - 1] === 'to';
  const isAim = words.some((word) => AIMS.has(word)) || (isTo && UP_TO.has(words[at - 2] ?? ''));
  const isWished = isAim || met(scanned, 'manner.wish') || isTo || words.includes('?');
  if (one.part === 'wanted') return isWished ? 'wanted' : 'now';
  if (isAim) return 'wanted';
  return words.some((word) => OTHER_WATER.has(word)) ? 'other' : 'now';
}
