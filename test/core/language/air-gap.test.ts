import { describe, expect, it } from 'vitest';
import { takenOff } from '../../../core/language/air-gap.ts';
import { scan } from '../../../core/language/tokens.ts';
import { saidAs } from '../../../core/language/said.ts';

function off(text: string) {
  const scanned = scan(text);
  return takenOff(
    scanned,
    scanned.numbers.map((number) => saidAs('length', 'nothing', number, 1)),
  );
}

describe('what is no side of the box', () => {
  it.each([
    ['90x45x50 cm, water stops 5 cm under the rim', { gap: '5 cm' }],
    ['48x18x21 in, 3 in sand', { sand: '3 in' }],
    ['120x60x60 cm, 8 cm sand bed and water 4 cm below the top', { sand: '8 cm', gap: '4 cm' }],
    ['120x60x60 cm with sand of 6 cm', { sand: '6 cm' }],
    ["100 by 45 by 50 cm, a hand's width of air at the top", { gap: '9 cm', isHand: true }],
    ['100 by 45 by 50 cm', {}],
  ])('%s', (text, taken) => expect(off(text)).toEqual(taken));
});
