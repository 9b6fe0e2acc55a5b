import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lightAround, lightAt, READING_RADIUS_CM } from '../../../core/corals/par-field.ts';
import { reading, spot } from './scenes.ts';
import { real } from './real.ts';

const two = [reading(1, spot(50, 20, 10), 100), reading(2, spot(70, 20, 10), 200)];
const inTank = fc
  .tuple(...[120, 60, 50].map((max) => real(0, max)))
  .map(([x = 0, y = 0, z = 0]) => spot(x, y, z));
const ppfds = fc.integer({ min: 1, max: 1500 });

describe('lightAt', () => {
  it('is exact at a reading', () => {
    expect(lightAt(two, spot(50, 20, 10))).toEqual({ lowPpfd: 100, ppfd: 100, highPpfd: 100, nearestCm: 0 });
  });

  // Inverse-distance weighting by hand: equal weights; then weights 1/25 and 1/225 -> (100 x 9 + 200) / 10 = 110.
  it.each([
    [60, 150],
    [55, 110],
  ])('at x = %d it is %d', (x, ppfd) => {
    expect(lightAt(two, spot(x, 20, 10))?.ppfd).toBeCloseTo(ppfd, 9);
  });

  it('says nothing where no reading is near', () => {
    expect(lightAt([], spot(0, 0, 0))).toBeUndefined();
    expect(lightAt(two, spot(50 - READING_RADIUS_CM - 0.1, 20, 10))).toBeUndefined();
    expect(lightAt(two, spot(50 - READING_RADIUS_CM + 0.1, 20, 10))).toBeDefined();
  });

  it('counts height double', () => {
    expect(lightAt(two, spot(50, 20, 10 + READING_RADIUS_CM / 2 + 0.1))).toBeUndefined();
    const above = lightAt([reading(1, spot(50, 20, 10), 100)], spot(50, 20, 20));
    const aside = lightAt([reading(1, spot(50, 20, 10), 100)], spot(70, 20, 10));
    expect(above?.lowPpfd).toBe(aside?.lowPpfd);
    expect([above?.nearestCm, aside?.nearestCm]).toEqual([10, 20]);
  });

  it('carries nothing on beyond a reading: only the range opens', () => {
    const near = lightAt([reading(1, spot(50, 20, 40), 300)], spot(50, 20, 35));
    const far = lightAt([reading(1, spot(50, 20, 40), 300)], spot(50, 20, 28));
    expect([near?.ppfd, far?.ppfd]).toEqual([300, 300]);
    expect(near?.lowPpfd).toBeGreaterThan(far?.lowPpfd ?? 0);
    expect(near?.highPpfd).toBeLessThan(far?.highPpfd ?? 0);
  });

  it('takes the newest of several readings at one spot', () => {
    const old = reading(1, spot(50, 20, 10), 100, 1);
    const now = reading(2, spot(50, 20, 10), 180, 2);
    for (const points of [
      [old, now],
      [now, old],
    ]) {
      expect(lightAt(points, spot(50, 20, 10))?.ppfd).toBe(180);
      expect(lightAt(points, spot(55, 20, 10))?.ppfd).toBe(180);
    }
  });

  it('lies between two readings anywhere on the line between them, the whole range', () => {
    const part = real(0, 1);
    const step = real(-12, 12);
    fc.assert(
      fc.property(inTank, step, step, step, ppfds, ppfds, part, (a, dx, dy, dz, one, other, along) => {
        const at = (t: number) => spot(a.xCm + t * dx, a.yCm + t * dy, a.zCm + t * dz);
        const here = lightAt([reading(1, at(0), one), reading(2, at(1), other)], at(along));
        expect(here).toBeDefined();
        if (here === undefined) return;
        const [least, most] = [Math.min(one, other), Math.max(one, other)];
        expect(here.lowPpfd).toBeGreaterThanOrEqual(least - 1e-9);
        expect(here.highPpfd).toBeLessThanOrEqual(most + 1e-9);
      }),
      { numRuns: 1000 },
    );
  });

  it('is an ordered range of real numbers, wherever the readings lie', () => {
    const points = fc.array(fc.tuple(inTank, ppfds), { maxLength: 12 });
    fc.assert(
      fc.property(points, inTank, fc.boolean(), (all, at, rough) => {
        const readings = all.map(([where, ppfd], id) => reading(id, where, ppfd));
        const error = rough ? ([20, 10, 6] as const) : ([0, 0, 0] as const);
        const here = lightAround(readings, at, error);
        if (here === undefined) return;
        expect(here.lowPpfd).toBeGreaterThan(0);
        expect(here.lowPpfd).toBeLessThanOrEqual(here.ppfd);
        expect(here.ppfd).toBeLessThanOrEqual(here.highPpfd);
        expect(here.nearestCm).toBeLessThanOrEqual(READING_RADIUS_CM);
      }),
    );
  });

  it('opens the range for a spot in words', () => {
    const sure = lightAround(two, spot(60, 20, 10), [0, 0, 0]);
    const rough = lightAround(two, spot(60, 20, 10), [20, 10, 6]);
    expect(rough?.lowPpfd).toBeLessThan(sure?.lowPpfd ?? 0);
    expect(rough?.highPpfd).toBeGreaterThan(sure?.highPpfd ?? 0);
  });
});
