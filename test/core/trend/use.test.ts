import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { MS_PER_DAY } from '../../../core/trend/dated.ts';
import { useOf } from '../../../core/trend/use.ts';

const on = (day: number, value: number) => ({ atMs: day * MS_PER_DAY, value });
const dosed = (day: number, rise: number) => ({ atMs: day * MS_PER_DAY, rise });

/** Salinity that rises by 0.1 a day. */
const salt = (day: number): number => 33 + day / 10;

describe('useOf', () => {
  it('two readings: (before - now + added) / days, and the kit’s error over the time', () => {
    const use = useOf({ readings: [on(0, 9.3), on(2, 7.5)], additions: [], resolution: 0.3 });
    expect(use).toMatchObject({ withinError: false, kitOnly: true, count: 2, additions: 0 });
    expect(use?.perDay).toBeCloseTo(0.9, 9);
    expect(use?.low).toBeCloseTo(0.75, 9);
    expect(use?.high).toBeCloseTo(1.05, 9);
  });

  it('adds back what was added from the first reading to before the last', () => {
    const additions = [dosed(-1, 9), dosed(0, 0.5), dosed(1, 0.5), dosed(2, 9)];
    const use = useOf({ readings: [on(0, 8), on(2, 8)], additions, resolution: 0.3 });
    expect(use).toMatchObject({ added: 1, additions: 2 });
    expect(use?.perDay).toBeCloseTo(0.5, 9);
  });

  it('is not known within half a day', () => {
    expect(useOf({ readings: [on(0, 8), on(0.4, 7)], additions: [], resolution: 0.3 })).toBeUndefined();
    expect(useOf({ readings: [on(0, 8)], additions: [], resolution: 0.3 })).toBeUndefined();
    expect(useOf({ readings: [], additions: [], resolution: 0.3 })).toBeUndefined();
  });

  it('a rising salinity hides no use of an ion that follows it', () => {
    // Salinity 33 to 36 over 30 days lifts 420 mg/L to 458; 1 mg/L a day is used and nothing added.
    const days = [0, 3, 6, 9, 12, 15, 18, 21, 24, 27, 30];
    const readings = days.map((day) => on(day, ((420 - day) * salt(day)) / 33));
    const salinity = { readings: days.map((day) => on(day, salt(day))), resolution: 0.7 };
    const log = { readings, additions: [], resolution: 10 };
    expect(useOf(log)?.perDay).toBeLessThan(0);
    const use = useOf({ ...log, salinity });
    expect(use?.atOneSalinity).toBe(true);
    // In water of the middle salinity, 34.5: 34.5 / 33 times as much.
    expect(use?.perDay).toBeCloseTo(34.5 / 33, 2);
    const steady = { ...salinity, readings: days.map((day) => on(day, 35 + (day % 2) * 0.3)) };
    expect(useOf({ ...log, salinity: steady })?.atOneSalinity).toBe(false);
  });

  const logs = fc.record({
    perDay: fc.double({ min: 0, max: 1.5, noNaN: true }),
    gaps: fc.array(fc.integer({ min: 1, max: 12 }), { minLength: 1, maxLength: 30 }),
    errors: fc.array(fc.double({ min: -0.15, max: 0.15, noNaN: true }), { minLength: 31, maxLength: 31 }),
    doses: fc.array(
      fc.tuple(fc.integer({ min: 0, max: 720 }), fc.double({ min: 0.1, max: 1, noNaN: true })),
      {
        maxLength: 40,
      },
    ),
  });

  it('finds a use that is known: the middle lies in its range, and the truth in nearly all of them', () => {
    let held = 0;
    let all = 0;
    fc.assert(
      fc.property(logs, ({ perDay, gaps, errors, doses }) => {
        const additions = doses
          .map(([halfDay, rise]) => dosed(halfDay / 2 + 0.1, rise))
          .sort((a, b) => a.atMs - b.atMs);
        let day = 0;
        const days = [0, ...gaps.map((gap) => (day += gap))];
        const readings = days.map((at, index) => {
          const added = additions
            .filter(({ atMs }) => atMs < at * MS_PER_DAY)
            .reduce((sum, { rise }) => sum + rise, 0);
          return on(at, Math.round((100 - perDay * at + added + (errors[index] ?? 0)) * 10) / 10);
        });
        const use = useOf({ readings, additions, resolution: 0.3 });
        if (use === undefined) throw new Error('no use');
        expect(use.low).toBeLessThanOrEqual(use.perDay);
        expect(use.high).toBeGreaterThanOrEqual(use.perDay);
        expect(use.withinError).toBe(use.low <= 1e-9 && use.high >= -1e-9);
        all++;
        if (use.low <= perDay && perDay <= use.high) held++;
      }),
      { numRuns: 2000 },
    );
    expect(held / all).toBeGreaterThan(0.95);
  });

  it('one wild reading among many hardly moves it', () => {
    const readings = [0, 2, 4, 6, 8, 10, 12, 14, 16].map((day) => on(day, 9 - day * 0.1));
    const wild = readings.map((one) => (one.atMs === 16 * MS_PER_DAY ? { ...one, value: 12 } : one));
    expect(useOf({ readings: wild, additions: [], resolution: 0.3 })?.perDay).toBeCloseTo(0.1, 6);
  });
});
