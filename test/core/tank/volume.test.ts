import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rockL, rockShareL, sandL } from '../../../core/tank/displaced.ts';
import { capacityL, type Size } from '../../../core/tank/shape.ts';
import { fits, waterIn } from '../../../core/tank/volume.ts';
import { problemOf } from '../../commands/text.ts';
import { anySize } from './sizes.ts';

const size: Size = { shape: 'box', lengthCm: 120, widthCm: 50, heightCm: 50 };

describe('rock and sand (densities and pores: common practice, no source)', () => {
  it('24 kg of rock at 2.2, 2.4 and 2.7 g/mL', () => {
    const { low, likely, high } = rockL(24_000);
    expect([low, likely, high].map((litres) => Number(litres.toFixed(2)))).toEqual([8.89, 10, 10.91]);
  });

  it('15 % of 300 L, a third more or less', () => {
    expect(rockShareL(15, 300).low).toBeCloseTo(30, 9);
    expect(rockShareL(15, 300)).toMatchObject({ likely: 45, high: 60 });
  });

  it('5 cm on 6000 cm2 is a bed of 30 L, 35 to 45 % of it water', () => {
    const { low, likely, high } = sandL(5, 6000);
    expect([low, likely, high].map((litres) => Number(litres.toFixed(3)))).toEqual([16.5, 18, 19.5]);
  });
});

describe('waterIn', () => {
  it('120 x 50 x 50 cm, water 46 cm, 24 kg rock, 5 cm sand, 60 L of sump: 276 - 10 - 18 + 60 (by hand)', () => {
    const found = waterIn({
      size,
      waterCm: 46,
      rock: { massG: 24_000 },
      sandCm: 5,
      sump: { volumeL: 60 },
    });
    expect(found.displayL).toBeCloseTo(300, 9);
    expect(found.waterL.likely).toBeCloseTo(276, 9);
    expect(found.netL.likely).toBeCloseTo(308, 9);
    expect(found.netL.low).toBeCloseTo(276 - 24 / 2.2 - 19.5 + 60, 9);
    expect(found.netL.high).toBeCloseTo(276 - 24 / 2.7 - 16.5 + 60, 9);
  });

  it('an unknown water line lies 2 to 5 cm below the rim, in a low tank at most a fifth of its height', () => {
    const { netL } = waterIn({ size });
    expect([netL.low, netL.likely, netL.high].map(Math.round)).toEqual([270, 282, 288]);
    const low = waterIn({ size: { shape: 'box', lengthCm: 30, widthCm: 30, heightCm: 10 } });
    expect(low.waterCm).toEqual({ low: 8, likely: 8, high: 8 });
  });

  it('a sump as a share of the display', () => {
    expect(waterIn({ size, waterCm: 50, sump: { percent: 20 } }).netL.likely).toBeCloseTo(360, 9);
  });

  it.each([
    ['height', { waterCm: 60 }],
    ['rock', { waterCm: 46, rock: { massG: 700_000 } }],
    ['sand', { waterCm: 30, sandCm: 35 }],
    ['rock', { rock: { percent: 80 } }],
  ] as const)('refuses what cannot be: %s', (field, contents) => {
    expect(problemOf(() => waterIn({ size, ...contents })).field).toBe(field);
  });

  it('without a sump the water never exceeds the glass, and low <= likely <= high', () => {
    fc.assert(
      fc.property(
        anySize,
        fc.integer({ min: 0, max: 30 }),
        fc.integer({ min: 0, max: 4 }),
        (tank, percent, sandCm) => {
          const { netL, displayL } = waterIn({ size: tank, rock: { percent }, sandCm });
          expect(displayL).toBeCloseTo(capacityL(tank), 9);
          expect(netL.low).toBeGreaterThan(0);
          expect(netL.low).toBeLessThanOrEqual(netL.likely);
          expect(netL.likely).toBeLessThanOrEqual(netL.high);
          expect(netL.high).toBeLessThan(displayL);
        },
      ),
    );
  });

  it('more rock, less water', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 60_000 }),
        fc.integer({ min: 1, max: 60_000 }),
        (massG, moreG) => {
          const some = waterIn({ size, rock: { massG } }).netL;
          const more = waterIn({ size, rock: { massG: massG + moreG } }).netL;
          expect(more.likely).toBeLessThan(some.likely);
          expect(more.low).toBeLessThan(some.low);
        },
      ),
    );
  });
});

describe('fits', () => {
  it.each([
    { net: 750, display: 704, sump: undefined, expected: false },
    { net: 750, display: 704, sump: 80, expected: true },
    { net: 704, display: 704, sump: undefined, expected: true },
    { net: 600, display: 704, sump: undefined, expected: true },
  ])('$net L in $display L with $sump L of sump: $expected', ({ net, display, sump, expected }) => {
    expect(fits(net, display, sump)).toBe(expected);
  });
});
