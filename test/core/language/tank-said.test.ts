import { describe, expect, it } from 'vitest';
import { saidAs } from '../../../core/language/said.ts';
import { sidesText } from '../../../core/language/side-units.ts';
import { tankSaid } from '../../../core/language/tank-said.ts';
import { scan } from '../../../core/language/tokens.ts';

function said(text: string) {
  const scanned = scan(text);
  const lengths = scanned.numbers.map((number) => saidAs('length', 'nothing', number, 1));
  const { sides, sump, left, glass, gap, level, sand, ...rest } = tankSaid(scanned, lengths);
  const one = { glass, gap, level, sand };
  const found = Object.entries(one).flatMap(([name, length]) =>
    length === undefined ? [] : [[name, length.text]],
  );
  const lists = Object.entries({ sump, left }).filter(([, list]) => list.length > 0);
  return {
    ...Object.fromEntries(found),
    ...Object.fromEntries(lists.map(([name, list]) => [name, list.map((each) => each.text)])),
    sides: sidesText(scanned.text, sides, []).text,
    shape: rest.shape,
    measured: rest.measured,
    isHand: rest.isHand,
  };
}

describe('what the lengths of a message are of a tank', () => {
  it.each([
    ['90x45x50 cm, water stops 5 cm under the rim', { sides: '90 x 45 x 50 cm', gap: '5 cm' }],
    ['48x18x21 in, 3 in sand', { sides: '48 x 18 x 21 in', sand: '3 in' }],
    ['120x60x60 cm, 8 cm sand bed and water 4 cm below the top', { sand: '8 cm', gap: '4 cm' }],
    ['120x60x60 cm with sand of 6 cm', { sand: '6 cm' }],
    ["100 by 45 by 50 cm, a hand's width of air at the top", { isHand: true }],
    [
      '120x50x55, 10mm glass, sand 5 cm, water 4 cm below the rim',
      { glass: '10 mm', sand: '5 cm', gap: '4 cm' },
    ],
    ['with thick glass, 15 mm, 130 by 60 by 60 outside', { glass: '15 mm', measured: 'outside' }],
    ['48 x 24 x 22 inches outside, 3/4 glass, fill line an inch and a half under the rim', { glass: '0.75' }],
    ['inside 60 by 38 cm, water 41', { measured: 'inside', level: '41' }],
    ['120x60x60 cm and sump 60x40, 20 deep', { sump: ['60', '40', '20'] }],
    ['hexagon, each side 14 in and 22 tall', { shape: 'hexagon', sides: '14 x 22 in' }],
    ['bowfront 48 long 18 at the ends 22 in the middle 24 tall, inches', { shape: 'bow front' }],
    ['corner tank, curved front, 70 along each wall, 55 deep', { shape: 'quarter round' }],
    ['L shape, 140x40 and 60x40', { shape: 'other' }],
  ])('%s', (text, found) => expect(said(text)).toMatchObject(found));
});

describe('the unit of a side that has none', () => {
  it.each([
    ['4ft by 18 by 18 inch', '4 ft x 18 in x 18 inch'],
    ['5ft x 2 x 2', '5 x 2 x 2 ft'],
    ['36x18x16 how many gallons', '36 x 18 x 16 in'],
    ['80x40x40, how many litres', '80 x 40 x 40 cm'],
    ['36x18x20', '36 x 18 x 20'],
  ])('%s', (text, sides) => expect(said(text).sides).toBe(sides));
});
