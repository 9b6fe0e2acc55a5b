import { describe, expect, it } from 'vitest';
import { capacityL } from '../../../core/tank/shape.ts';
import { readSize } from '../../../core/tank/size.ts';
import { problemOf } from '../../commands/text.ts';

describe('readSize', () => {
  it.each([
    { text: '120 x 50 x 50 cm', litres: 300 },
    { text: '120cm x 50cm x 50cm', litres: 300 },
    { text: '1200*500*500 mm', litres: 300 },
    { text: '120 × 50 × 50 cm', litres: 300 },
    { text: '1.2 by 0.5 by 0.5 m', litres: 300 },
    { text: '120,0 x 50,0 x 50,0 cm', litres: 300 },
    { text: '36x18x18 in', litres: 191.14 },
    { text: '36" x 18" x 18"', litres: 191.14 },
    { text: '3 ft x 18 in x 18 in', litres: 191.14 },
  ])('$text -> $litres L', ({ text, litres }) => {
    expect(capacityL(readSize(text, 'box', 'size'))).toBeCloseTo(litres, 2);
  });

  it('takes the lengths of each shape in their order', () => {
    expect(readSize('60 x 50 cm', 'cylinder', 'size')).toEqual({
      shape: 'cylinder',
      diameterCm: 60,
      heightCm: 50,
    });
    expect(readSize('120 x 40 x 50 x 60 cm', 'bow front', 'size')).toMatchObject({
      endDepthCm: 40,
      middleDepthCm: 50,
      heightCm: 60,
    });
    expect(readSize('90 x 40 x 60 cm', 'corner pentagon', 'size')).toMatchObject({ wallCm: 90, shortCm: 40 });
    expect(readSize('60 x 50 cm', 'quarter round', 'size')).toMatchObject({ sideCm: 60, insetCm: 0 });
  });

  it('asks for the unit, with both readings offered', () => {
    expect(problemOf(() => readSize('36 x 18 x 18', 'box', 'size')).choices).toEqual([
      '36 x 18 x 18 cm',
      '36 x 18 x 18 in',
    ]);
  });

  it.each([
    ['a box of two lengths', '120 x 50 cm', 'box'],
    ['a cylinder of three', '60 x 60 x 50 cm', 'cylinder'],
    ['words', 'big one', 'box'],
    ['an unknown unit', '3 x 2 x 2 yd', 'box'],
    ['a comma that can be read both ways', '1,200 x 500 x 500 mm', 'box'],
    ['a flat front', '120 x 50 x 50 x 60 cm', 'bow front'],
    ['a bow deeper than a half disc', '40 x 30 x 60 x 60 cm', 'bow front'],
    ['a pentagon that is a square', '60 x 60 x 50 cm', 'corner pentagon'],
    ['a side of nothing', '0 x 50 x 50 cm', 'box'],
    ['a lake', '200 x 50 x 50 m', 'box'],
  ] as const)('refuses %s', (_, text, shape) => {
    expect(problemOf(() => readSize(text, shape, 'size')).field).toBe('size');
  });
});
