import { met } from './met.ts';
import type { Said } from './said.ts';
import { scan, type Scanned } from './tokens.ts';

/** What of the sides of a tank is no side: air under the rim and sand, as texts for `readQuantity`. */
export interface TakenOff {
  readonly gap?: string;
  readonly sand?: string;
  /** The gap was said as a hand's width. */
  readonly isHand?: true;
}

/** A hand's width: 8 to 10 cm, the middle of it; common practice, no source. */
const HAND_CM = 9;
const HAND = /\b(?:hand'?s?[ -](?:width|breadth)|handsbreadth|hand of air)\b/;
/** Letters of a clause beside a length that may say what it is of. Own choice. */
const NEAR = 28;

/** "water stops 5 cm under the rim", "3 in sand": by the words beside a length that is no side of the box. */
export function takenOff({ text }: Scanned, lengths: readonly Said[]): TakenOff {
  const beyond = lengths.slice(SIDES);
  const around = beyond.map((one, index) => ({
    one,
    words: wordsBeside(text, one, lengths[index + SIDES - 1], beyond[index + 1]),
  }));
  const sand = around.find(({ words }) => met(scan(words), 'places.sandBed'))?.one;
  const gap = around.find(
    ({ one, words }) => one !== sand && met(scan(words), 'places.rim', 'places.airGap'),
  )?.one;
  const isHand = gap === undefined && HAND.test(text);
  const under = isHand ? `${HAND_CM} cm` : gap?.text;
  return {
    ...(under === undefined ? {} : { gap: under }),
    ...(sand === undefined ? {} : { sand: sand.text }),
    ...(isHand ? { isHand } : {}),
  };
}

/** The box is the first of the lengths. */
const SIDES = 3;

/** The words behind a length up to the next comma, else those before it. */
function wordsBeside(
  text: string,
  { number }: Said,
  before: Said | undefined,
  after: Said | undefined,
): string {
  const behind = text.slice(number.end, Math.min(number.end + NEAR, after?.number.start ?? text.length));
  const own = /^[^,.;?!]*/.exec(behind)?.[0] ?? '';
  const said = met(scan(own), 'places.sandBed', 'places.rim', 'places.airGap');
  const from = Math.max(before?.number.end ?? 0, number.start - NEAR);
  return said ? (own.split(/\b(?:and|with)\b/)[0] ?? own) : text.slice(from, number.start);
}
