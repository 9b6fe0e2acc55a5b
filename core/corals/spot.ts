import { Problem } from '../problem.ts';
import { clean } from '../quantity/clean.ts';
import { say } from '../wording/say.ts';
import type { Box, Spot } from './scene.ts';
import { measuredAxes, type Axis } from './spot-lengths.ts';

/** A spot as read. `rough`: at least one of its three was said in words. */
export interface ReadSpot {
  readonly spot: Spot;
  readonly rough: boolean;
}

/**
 * Where a word lies, as a part of the side: the middles of thirds of the length and the depth; the height of sand is
 * 0, of low, middle and high 1/4, 1/2 and 3/4. Project rule.
 */
const places: Readonly<Record<Axis, Readonly<Record<string, number>>>> = {
  x: { left: 1 / 6, right: 5 / 6 },
  y: { front: 1 / 6, back: 5 / 6, rear: 5 / 6 },
  z: {
    sand: 0,
    sandbed: 0,
    bottom: 0,
    floor: 0,
    low: 1 / 4,
    lower: 1 / 4,
    high: 3 / 4,
    upper: 3 / 4,
    top: 3 / 4,
  },
};
const MIDDLE = 1 / 2;
const FILLER = new Set(
  'a an and at area bed centimetres corner cm down end from glass in is it near of on part rock rocks rockwork side spot tank the there third to wall water just towards up sits'.split(
    ' ',
  ),
);

/**
 * Reads where something stands: words ("left, back, middle rock"; "middle right sand"), three lengths ("12 x 30 x 20
 * cm": x from the left, y from the front, z up), or lengths from named sides mixed with words. A side that is not said
 * is asked for, never guessed.
 *
 * @throws Problem with a hint, or with the limits of the box.
 */
export function readSpot(text: string, box: Box, field = 'spot'): ReadSpot {
  const problem = (message: string): Problem =>
    new Problem(message, { field, given: text.trim(), hint: say('coral.hintSpot') });
  const { lengths, rest } = measuredAxes(clean(text), box, field);
  const words = wordAxes(rest, lengths, problem);
  const side = { x: box.lengthCm, y: box.widthCm, z: box.heightCm };
  const at = (axis: Axis): number => {
    const length = lengths[axis];
    if (length !== undefined) return inside(axis, length, side[axis], text, field);
    const part = words[axis];
    if (part === undefined) throw problem(say(missing[axis]));
    return part * side[axis];
  };
  return {
    spot: { xCm: at('x'), yCm: at('y'), zCm: at('z') },
    rough: (['x', 'y', 'z'] as const).some((axis) => lengths[axis] === undefined && words[axis] !== 0),
  };
}

const missing = {
  x: 'coral.whichAcross',
  y: 'coral.whichDepth',
  z: 'coral.whichHeight',
} as const;

const outside = {
  x: 'coral.outsideAcross',
  y: 'coral.outsideDepth',
  z: 'coral.outsideHeight',
} as const;

function inside(axis: Axis, cm: number, sideCm: number, given: string, field: string): number {
  if (cm >= 0 && cm <= sideCm) return cm;
  throw new Problem(say(outside[axis]), {
    field,
    given: given.trim(),
    limit: say('convert.fromTo', { low: '0', high: `${Math.round(sideCm * 10) / 10} cm` }),
  });
}

/** The axes said in words. "centre" is across; "middle" fills what nothing else says, if that is clear. */
function wordAxes(
  rest: string,
  lengths: Partial<Record<Axis, number>>,
  problem: (message: string) => Problem,
): Partial<Record<Axis, number>> {
  const found: Partial<Record<Axis, number>> = {};
  const put = (axis: Axis, part: number): void => {
    if (lengths[axis] !== undefined || (found[axis] !== undefined && found[axis] !== part))
      throw problem(say('coral.twoPlaces'));
    found[axis] = part;
  };
  const tied = rest
    .replace(/\b(?:mid|middle)[- ](?:of the )?(?:rocks?|rockwork|height|tank height|way up)\b/g, () => {
      put('z', MIDDLE);
      return ' ';
    })
    .split(/[\s,;/&-]+/)
    .filter((word) => word !== '' && !FILLER.has(word));
  let middles = 0;
  for (const word of tied) {
    const axis = (['x', 'y', 'z'] as const).find((one) => places[one][word] !== undefined);
    if (axis !== undefined) put(axis, places[axis][word] ?? MIDDLE);
    else if (/^(?:middle|mid|cent(?:re|er))$/.test(word)) middles++;
    else throw problem(say('coral.noPlace', { word: word.slice(0, 30) }));
  }
  const open = (['x', 'y', 'z'] as const).filter(
    (axis) => found[axis] === undefined && lengths[axis] === undefined,
  );
  if (middles === 0) return found;
  const across = /\bcent(?:re|er)\b/.test(rest) && open.includes('x') && middles === 1;
  if (!across && middles !== open.length) throw problem(say('coral.middleOfWhat'));
  for (const axis of across ? (['x'] as const) : open) put(axis, MIDDLE);
  return found;
}
