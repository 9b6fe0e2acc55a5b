import { describe, expect, it } from 'vitest';
import { volumeRows } from '../../../../commands/ask/rows/volume.ts';
import { rowAnswer } from './asked.ts';

function headline(text: string): string {
  return rowAnswer(volumeRows, 'volume', text)?.headline ?? '';
}

/** By hand: 1 in = 2.54 cm, 1 L = 1000 cm³; rock 2.4 g/mL and 60 % of a bed of sand (common practice, no source). */
describe('the water of a tank told by its sides', () => {
  it.each([
    // Panes off: 118 x 48 x 50 cm of water = 283.2 L, less 20 kg of rock 8.3 L, less 118 x 48 x 5 x 0.6 = 17 L.
    [
      'tank 120x50x55, 10mm glass, sand 5 cm, water stops 4 cm below the rim, guess 20 kg rock. litres?',
      '257.9 L',
    ],
    // 121.92 x 45.72 x (45.72 - 3) cm = 238.1 L, less 12.5 L.
    ['its 4ft by 18 by 18 inch, bout 30 kilo of rock in, how much water really', '225.6 L'],
    // Six triangles of 35.56 cm: 3285 cm² x 50.8 cm = 166.9 L; sump 76.2 x 30.48 x 22.86 cm = 53.1 L.
    [
      'hexagon, each side 14 in and 22 tall, water stops 2 in under the rim. Below it a box 30 by 12 with 9 in of water. gallons?',
      '220 L',
    ],
    // 120 x 60 x 57 cm = 410.4 L, 16.7 L of rock, sump 60 x 40 x 15 cm = 36 L.
    ['How many liter real have I in a 120x60x60 with 15 cm water in sump 60x40 and 40 kg rock', '429.7 L'],
    // A pane off all round: 90 x 45 x 45 is 88 x 43 x 44 inside, 3 cm of air: 155.1 L.
    ['90*45*45, 10mm glass, real litres', '155.1 L'],
  ])('%s', (text, litres) => expect(headline(text)).toContain(litres));

  it.each([
    ['L shape, long leg 140x40, short leg 60x40, 45 water. litres', /no sum for that shape/],
    ['bowfront 36 in long, gallons?', /^A bow front needs: length/],
  ])('gives no figure it cannot stand by: %s', (text, says) => expect(headline(text)).toMatch(says));
});
