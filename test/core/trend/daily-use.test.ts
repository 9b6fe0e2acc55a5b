import { array, assert, integer, property, record } from 'fast-check';
import { describe, expect, it } from 'vitest';
import { useBetween, withoutAdditions } from '../../../core/trend/daily-use.ts';
import { MS_PER_DAY, pointsFrom } from '../../../core/trend/dated.ts';
import { leastSquares } from '../../../core/trend/fit.ts';

const on = (day: number, value: number) => ({ atMs: day * MS_PER_DAY, value });
const added = (day: number, rise: number) => ({ atMs: day * MS_PER_DAY, rise });

describe('useBetween', () => {
  it('is the worked pair 9.3 to 7.5 dKH in two days: 0.9 a day, 0.75 to 1.05', () => {
    const [use] = useBetween([on(0, 9.3), on(2, 7.5)], [], 0.3);
    expect(use?.perDay).toBeCloseTo(0.9, 10);
    expect(use?.low).toBeCloseTo(0.75, 10);
    expect(use?.high).toBeCloseTo(1.05, 10);
  });

  it('adds back what was added between the two, from the first reading on', () => {
    const additions = [added(-1, 5), added(0, 0.5), added(1, 0.7), added(2, 0.4)];
    const uses = useBetween([on(0, 8), on(2, 8), on(3, 7.9)], additions, 0.3);
    expect(uses.map((use) => use.added)).toEqual([1.2, 0.4]);
    expect(uses[0]?.perDay).toBeCloseTo(0.6, 10);
    expect(uses[1]?.perDay).toBeCloseTo(0.5, 10);
  });

  it('passes over a second test of the same hour, and a gap of years', () => {
    const uses = useBetween([on(0, 8), on(0.02, 8.2), on(2, 7), on(900, 8), on(901, 7.5)], [], 0.3);
    expect(uses.map(({ days }) => Math.round(days * 100) / 100)).toEqual([2, 1]);
    expect(uses[0]?.perDay).toBeCloseTo(0.5, 10);
  });

  it('has nothing to say of fewer than two readings', () => {
    expect(useBetween([], [], 1)).toEqual([]);
    expect(useBetween([on(0, 8)], [], 1)).toEqual([]);
  });

  it('finds the use of a tank with steady use and any additions', () => {
    const doses = array(record({ day: integer({ min: 0, max: 290 }), rise: integer({ min: 0, max: 20 }) }), {
      maxLength: 40,
    });
    assert(
      property(doses, integer({ min: 1, max: 32 }), (plan, sixteenths) => {
        const perDay = sixteenths / 16;
        const additions = plan.map(({ day, rise }) => added(day / 10, rise / 16));
        const readings = Array.from({ length: 31 }, (_, day) => {
          const so = additions.filter(({ atMs }) => atMs < day * MS_PER_DAY);
          return on(day, 80 - perDay * day + so.reduce((sum, { rise }) => sum + rise, 0));
        });
        for (const use of useBetween(readings, additions, 0.3)) expect(use.perDay).toBeCloseTo(perDay, 8);
        const bare = leastSquares(pointsFrom(0, withoutAdditions(readings, additions)));
        expect(bare?.slopePerDay).toBeCloseTo(-perDay, 8);
      }),
    );
  });
});

describe('withoutAdditions', () => {
  it('leaves an empty list empty', () => expect(withoutAdditions([], [added(0, 1)])).toEqual([]));
});
