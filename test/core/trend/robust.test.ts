import { array, assert, integer, property } from 'fast-check';
import { describe, expect, it } from 'vitest';
import { kendallCritical95, kendallUpper } from '../../../core/trend/kendall.ts';
import { median, medianDeviation, valueOfRank } from '../../../core/trend/median.ts';
import type { Point } from '../../../core/trend/point.ts';
import { MOST_ROBUST, theilSen } from '../../../core/trend/robust.ts';
import { daily, exactLines } from './lines.ts';

function lineOf(points: readonly Point[]) {
  const line = theilSen(points);
  if (line === undefined) throw new Error('no line');
  return line;
}

/** All orders of the values. */
function orders(values: readonly number[]): number[][] {
  if (values.length < 2) return [[...values]];
  return values.flatMap((value, i) => orders(values.toSpliced(i, 1)).map((rest) => [value, ...rest]));
}

describe('worked examples', () => {
  it('Sen 1968 (from memory): slope 4', () => {
    const times = [1, 2, 3, 4, 10, 12, 18];
    const values = [9, 15, 19, 20, 45, 55, 78];
    expect(lineOf(times.map((day, i) => ({ day, value: values[i] ?? 0 }))).slopePerDay).toBe(4);
  });

  it('Hollander & Wolfe, cloud seeding (from memory): slope -0.056', () => {
    const line = lineOf(daily([1.26, 1.27, 1.12, 1.16, 1.03]));
    expect(line.slopePerDay).toBeCloseTo(-0.05625, 10);
    // Five points hold 95 % only between the outermost slopes (1 - 2/120 = 0.983).
    expect(line.slope?.low).toBeCloseTo(-0.15, 10);
    expect(line.slope?.high).toBeCloseTo(0.04, 10);
  });
});

describe('kendallUpper', () => {
  // Hollander & Wolfe, Nonparametric Statistical Methods, table of Kendall's K; from memory.
  it.each([
    { n: 4, k: 6, expected: 0.042 },
    { n: 5, k: 8, expected: 0.042 },
    { n: 5, k: 10, expected: 0.008 },
    { n: 6, k: 11, expected: 0.028 },
    { n: 7, k: 13, expected: 0.035 },
    { n: 7, k: 15, expected: 0.015 },
    { n: 8, k: 16, expected: 0.031 },
    { n: 10, k: 21, expected: 0.036 },
    { n: 10, k: 23, expected: 0.023 },
  ])('P(K >= $k), n = $n', ({ n, k, expected }) => {
    const upper = kendallUpper(n)[((n * (n - 1)) / 2 - k) / 2] ?? Number.NaN;
    expect(Math.abs(upper - expected)).toBeLessThanOrEqual(0.0005);
  });

  it.each([2, 7, 40])('adds up to 1 for %i points', (n) => expect(kendallUpper(n).at(-1)).toBeCloseTo(1, 9));
});

describe('the rank interval', () => {
  it.each([5, 6, 7])('holds the true slope, 0, in 95 %% of all orders of %i points, but no wider', (n) => {
    // Counted over every order, so it rests on no table: the interval misses as often as the one next to it may not.
    const values = Array.from({ length: n }, (_, i) => 2 ** i);
    const all = orders(values);
    const missed = all.filter((order) => {
      const { slope } = lineOf(daily(order));
      return slope === undefined || slope.low > 0 || slope.high < 0;
    });
    expect(missed.length / all.length).toBeLessThanOrEqual(0.05);
    const critical = kendallCritical95(n) ?? Number.NaN;
    const rank = ((n * (n - 1)) / 2 - critical) / 2;
    const narrower = 2 * (kendallUpper(n)[rank] ?? Number.NaN);
    expect(missed.length / all.length).toBeCloseTo(2 * (kendallUpper(n)[rank - 1] ?? 0), 10);
    expect(narrower).toBeGreaterThan(0.05);
  });

  it.each([0, 1, 2, 3, 4])('there is none for %i points', (n) =>
    expect(kendallCritical95(n)).toBeUndefined(),
  );

  it('the exact and the normal value meet at 40 and 41 points', () => {
    const [exact = 0, normal = 0] = [kendallCritical95(40), kendallCritical95(41)];
    // sqrt(Var K) grows by (41/40)^1.5 = 3.8 %; K moves in steps of 2.
    expect(Math.abs(normal / exact - 1.038)).toBeLessThan(0.02);
  });

  it('equal times take the normal value with the smaller variance', () => {
    // n = 10, two at one time: (10*9*25 - 2*1*9) / 18 = 124; 1.959964 sqrt(124) = 21.825.
    expect(kendallCritical95(10, [2, 1, 1, 1, 1, 1, 1, 1, 1])).toBeCloseTo(21.825, 3);
  });
});

describe('theilSen', () => {
  it('finds an exact line again', () => {
    assert(
      property(exactLines, ({ slope, level, points }) => {
        const line = lineOf(points);
        expect(line.slopePerDay).toBeCloseTo(slope, 9);
        expect(line.at(0)).toBeCloseTo(level, 6);
      }),
    );
  });

  it('is not moved by a wild reading', () => {
    const values = Array.from({ length: 12 }, (_, i) => 9 - 0.1 * i);
    expect(lineOf(daily(values.with(6, 84))).slopePerDay).toBeCloseTo(-0.1, 10);
  });

  it('draws a fan through the middle that opens both ways', () => {
    const line = lineOf(daily([8, 8.3, 8.1, 8.6, 8.4, 8.9, 8.8]));
    const width = (day: number): number => (line.bandAt(day)?.high ?? 0) - (line.bandAt(day)?.low ?? 0);
    expect(width(4)).toBeCloseTo(0, 12);
    expect(width(1)).toBeGreaterThan(0.1);
    expect(width(7)).toBeCloseTo(width(1), 10);
    expect(line.bandAt(7)?.high).toBeGreaterThan(line.at(7));
  });

  it('has no line for one time, and a bound', () => {
    expect(theilSen([])).toBeUndefined();
    expect(
      theilSen([
        { day: 1, value: 8 },
        { day: 1, value: 9 },
      ]),
    ).toBeUndefined();
    expect(() => theilSen(daily(Array.from({ length: MOST_ROBUST + 1 }, () => 1)))).toThrow(/at most/);
  });
});

describe('median', () => {
  it.each([
    { values: [3], expected: 3 },
    { values: [3, 1], expected: 2 },
    { values: [9, 1, 2], expected: 2 },
    { values: [4, 1, 3, 2], expected: 2.5 },
  ])('of $values', ({ values, expected }) => expect(median(values)).toBe(expected));

  it('deviation: 1, 1, 2, 2, 4, 6, 9 -> 1', () => expect(medianDeviation([1, 1, 2, 2, 4, 6, 9])).toBe(1));
  it('a rank is where sorting puts it, repeats or not', () => {
    const lists = array(integer({ min: -9, max: 9 }), { minLength: 1, maxLength: 60 });
    assert(
      property(lists, integer({ min: 0, max: 59 }), (values, pick) => {
        const rank = pick % values.length;
        expect(valueOfRank(Float64Array.from(values), rank)).toBe(Float64Array.from(values).sort()[rank]);
      }),
    );
  });

  it('of nothing is a bug', () => expect(() => median([])).toThrow(/no value/));
});
