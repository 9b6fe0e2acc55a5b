import { assert, property } from 'fast-check';
import { describe, expect, it } from 'vitest';
import { leastSquares } from '../../../core/trend/fit.ts';
import { studentT95 } from '../../../core/trend/student.ts';
import { exactLines } from './lines.ts';
import { norris } from './norris.ts';

function fitted(points: Parameters<typeof leastSquares>[0]) {
  const fit = leastSquares(points);
  if (fit === undefined) throw new Error('no line');
  return fit;
}

describe('NIST StRD Norris', () => {
  // NIST Statistical Reference Datasets, Norris, certified values.
  const fit = fitted(norris);

  it.each([
    { what: 'slope', got: fit.slopePerDay, expected: 1.00211681802045 },
    { what: 'intercept', got: fit.intercept, expected: -0.262323073774029 },
    { what: 'residual standard deviation', got: fit.residualSd, expected: 0.884796396144373 },
    { what: 'standard error of the slope', got: fit.slopeError, expected: 0.429796848199937e-3 },
  ])('$what', ({ got, expected }) => {
    expect(Math.abs((got ?? Number.NaN) / expected - 1)).toBeLessThan(1e-11);
  });

  it('the range at day 0 is that of the intercept', () => {
    // Certified standard deviation of the intercept 0.232818234301152; t(34) = 2.0322 (NIST table 1.3.6.7.2: 2.032).
    const band = fit.bandAt(0);
    expect(((band?.high ?? Number.NaN) - fit.intercept) / studentT95(34)).toBeCloseTo(0.232818234301152, 10);
  });
});

// Anscombe F.J. 1973. Graphs in statistical analysis. American Statistician 27:17-21, table: four sets of one line.
const tens = [10, 8, 13, 9, 11, 14, 6, 4, 12, 7, 5];
const eights = [8, 8, 8, 8, 8, 8, 8, 19, 8, 8, 8];
const anscombe = [
  { set: 1, x: tens, y: [8.04, 6.95, 7.58, 8.81, 8.33, 9.96, 7.24, 4.26, 10.84, 4.82, 5.68] },
  { set: 2, x: tens, y: [9.14, 8.14, 8.74, 8.77, 9.26, 8.1, 6.13, 3.1, 9.13, 7.26, 4.74] },
  { set: 3, x: tens, y: [7.46, 6.77, 12.74, 7.11, 7.81, 8.84, 6.08, 5.39, 8.15, 6.42, 5.73] },
  { set: 4, x: eights, y: [6.58, 5.76, 7.71, 8.84, 8.47, 7.04, 5.25, 12.5, 5.56, 7.91, 6.89] },
];

describe('Anscombe 1973', () => {
  it.each(anscombe)('set $set: y = 3.0 + 0.50 x, standard error 0.118', ({ x, y }) => {
    const fit = fitted(x.map((day, i) => ({ day, value: y[i] ?? Number.NaN })));
    expect(fit.slopePerDay).toBeCloseTo(0.5, 3);
    expect(fit.intercept).toBeCloseTo(3, 2);
    expect(fit.slopeError).toBeCloseTo(0.118, 3);
  });
});

describe('leastSquares', () => {
  it('finds an exact line again', () => {
    assert(
      property(exactLines, ({ slope, level, points }) => {
        const fit = fitted(points);
        expect(fit.slopePerDay).toBeCloseTo(slope, 7);
        expect(fit.at(0)).toBeCloseTo(level, 5);
        expect((fit.slope?.high ?? 9) - (fit.slope?.low ?? 0)).toBeLessThan(1e-5);
      }),
    );
  });

  it('has no interval for two points and no line for one time', () => {
    expect(
      fitted([
        { day: 0, value: 8 },
        { day: 2, value: 7 },
      ]),
    ).toMatchObject({ slopePerDay: -0.5, slope: undefined });
    expect(leastSquares([])).toBeUndefined();
    expect(
      leastSquares([
        { day: 1, value: 8 },
        { day: 1, value: 9 },
      ]),
    ).toBeUndefined();
  });
});

describe('studentT95', () => {
  // NIST/SEMATECH e-Handbook of Statistical Methods, table 1.3.6.7.2, column 0.975.
  it.each([
    { df: 1, expected: 12.706 },
    { df: 2, expected: 4.303 },
    { df: 3, expected: 3.182 },
    { df: 4, expected: 2.776 },
    { df: 5, expected: 2.571 },
    { df: 10, expected: 2.228 },
    { df: 15, expected: 2.131 },
    { df: 30, expected: 2.042 },
    { df: 60, expected: 2.0 },
    { df: 100, expected: 1.984 },
  ])('$df degrees of freedom: $expected', ({ df, expected }) => {
    expect(Math.abs(studentT95(df) - expected)).toBeLessThanOrEqual(0.0005);
  });

  it('tends to the normal 1.960', () => expect(studentT95(100_000)).toBeCloseTo(1.95999, 4));
  it.each([0, -1, 1.5, Number.NaN])('refuses %s', (df) => expect(() => studentT95(df)).toThrow(/t quantile/));
});
