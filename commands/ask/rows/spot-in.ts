import type { Frame } from '../../../core/language/frame.ts';
import { met, type Met } from '../../../core/language/met.ts';
import { say } from '../../../core/wording/say.ts';

/** A spot put together from the places that were named, as `readSpot` takes it, and the sides nothing was said of. */
export interface SpotIn {
  readonly text: string;
  readonly missing: readonly string[];
}

type Places = readonly (readonly [word: string, ...classes: Met[]])[];

const across: Places = [
  ['left', 'places.leftSide'],
  ['right', 'places.rightSide'],
];
const deep: Places = [
  ['front', 'places.frontSide'],
  ['back', 'places.backSide'],
];
const high: Places = [
  ['sand', 'places.sand', 'places.sandBed'],
  ['low', 'places.bottom'],
  ['high', 'places.top'],
  ['middle rock', 'places.middle'],
];

export function spotSaid({ reading: { scanned } }: Frame): SpotIn {
  const word = (places: Places): string | undefined =>
    places.find(([, ...classes]) => met(scanned, ...classes))?.[0];
  const sides = [
    [word(across), say('ask.leftOrRight')],
    [word(deep), say('ask.frontOrBack')],
    [word(high), say('ask.howHigh')],
  ] as const;
  return {
    text: sides.flatMap(([found]) => found ?? []).join(', '),
    missing: sides.flatMap(([found, side]) => (found === undefined ? [side] : [])),
  };
}

/** Heads, or the one length where width is spoken of: another length may be a distance. */
export function sizeSaid({
  slots: { heads, lengths = [] },
  reading: { scanned },
}: Frame): string | undefined {
  if (heads !== undefined) return heads;
  return lengths.length === 1 && met(scanned, 'sums.length') ? lengths[0] : undefined;
}
