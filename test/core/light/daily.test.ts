import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  dailyLightMol,
  dayVerdict,
  fullHoursFor,
  fullLightEquivalentHours,
  litHours,
  peakFor,
  usualFullHoursBeside,
} from '../../../core/light/daily.ts';
import { Problem } from '../../../core/problem.ts';

const DLI =
  'daily light integral: mol/m2/d = PPFD x hours x 0.0036 (Purdue Extension HO-238-W; Faust & Logan 2018)';
const RAMP = 'area of a triangle: a linear ramp counts half';

const totals = [
  { ppfd: 100, fullHours: 10, rampHours: 0, expected: 3.6, source: DLI },
  { ppfd: 200, fullHours: 6, rampHours: 0, expected: 4.32, source: DLI },
  { ppfd: 200, fullHours: 8, rampHours: 0, expected: 5.76, source: DLI },
  { ppfd: 200, fullHours: 12, rampHours: 0, expected: 8.64, source: DLI },
  { ppfd: 200, fullHours: 16, rampHours: 0, expected: 11.52, source: DLI },
  { ppfd: 250, fullHours: 12, rampHours: 0, expected: 10.8, source: DLI },
  { ppfd: 350, fullHours: 9.5, rampHours: 0, expected: 11.97, source: DLI },
  { ppfd: 1, fullHours: 24, rampHours: 0, expected: 0.0864, source: DLI },
  { ppfd: 2000, fullHours: 12, rampHours: 0, expected: 86.4, source: DLI },
  { ppfd: 200, fullHours: 8, rampHours: 1, expected: 6.48, source: RAMP },
  { ppfd: 100, fullHours: 0, rampHours: 5, expected: 1.8, source: RAMP },
];

/** 200 PAR, 8 h full with ramps of 1 h, by the second of its 10 h. */
function rampedPpfd(second: number): number {
  return Math.min(1, second / 3600, (10 * 3600 - second) / 3600) * 200;
}

describe('dailyLightMol', () => {
  it.each(totals)(
    '$ppfd PAR, $fullHours h, ramps of $rampHours h: $source',
    ({ ppfd, fullHours, rampHours, expected }) => {
      expect(dailyLightMol(ppfd, { fullHours, rampHours })).toBeCloseTo(expected, 9);
    },
  );

  it('equals the sum of the light of every second of a ramped day', () => {
    const sumMol = Array.from({ length: 10 * 3600 }, (_, s) => rampedPpfd(s + 0.5) * 1e-6).reduce(
      (a, b) => a + b,
      0,
    );
    expect(dailyLightMol(200, { fullHours: 8, rampHours: 1 })).toBeCloseTo(sumMol, 9);
  });

  it.each([
    { ppfd: 0, fullHours: 8, rampHours: 0 },
    { ppfd: 5000, fullHours: 8, rampHours: 0 },
    { ppfd: 200, fullHours: 0, rampHours: 0 },
    { ppfd: 200, fullHours: 25, rampHours: 0 },
    { ppfd: 200, fullHours: 20, rampHours: 3 },
    { ppfd: 200, fullHours: 8, rampHours: -1 },
    { ppfd: 200, fullHours: Number.NaN, rampHours: 0 },
  ])('refuses $ppfd PAR, $fullHours h, ramps of $rampHours h', ({ ppfd, fullHours, rampHours }) => {
    expect(() => dailyLightMol(ppfd, { fullHours, rampHours })).toThrow(Problem);
  });
});

describe('keeping the daily total', () => {
  it('8 h at 200 PAR is 12 h at 133.3 PAR', () => {
    expect(peakFor(5.76, { fullHours: 12, rampHours: 0 })).toBeCloseTo(133.333, 3);
  });

  it('8 h at 200 PAR is 6 h 40 min at 240 PAR', () => {
    expect(fullHoursFor(5.76, 240, 0)).toBeCloseTo(6 + 2 / 3, 9);
  });

  const period = fc.record({
    fullHours: fc.double({ min: 1, max: 16, noNaN: true }),
    rampHours: fc.double({ min: 0, max: 4, noNaN: true }),
  });
  const ppfd = fc.double({ min: 1, max: 2500, noNaN: true });

  it('gives back the peak, and the hours, that a total was worked out from', () => {
    fc.assert(
      fc.property(ppfd, period, (peak, day) => {
        const total = dailyLightMol(peak, day);
        expect(peakFor(total, day)).toBeCloseTo(peak, 6);
        expect(fullHoursFor(total, peak, day.rampHours)).toBeCloseTo(day.fullHours, 6);
      }),
    );
  });

  it('keeps the total when the hours change and the peak follows', () => {
    fc.assert(
      fc.property(fc.double({ min: 10, max: 250, noNaN: true }), period, period, (peak, day, other) => {
        const total = dailyLightMol(peak, day);
        const followed = total / (0.0036 * fullLightEquivalentHours(other));
        fc.pre(followed >= 1 && followed <= 2500);
        expect(dailyLightMol(peakFor(total, other), other)).toBeCloseTo(total, 9);
      }),
    );
  });

  it('refuses a peak no lamp has and hours no day has', () => {
    expect(() => peakFor(60, { fullHours: 1, rampHours: 0 })).toThrow(Problem);
    expect(() => fullHoursFor(20, 100, 0)).toThrow(Problem);
    expect(() => fullHoursFor(0.5, 200, 2)).toThrow(Problem);
  });
});

describe('the usual day (common practice, no source)', () => {
  it.each([
    { fullHours: 6, rampHours: 0, expected: 'shorter than usual' },
    { fullHours: 8, rampHours: 1, expected: 'usual' },
    { fullHours: 10, rampHours: 1, expected: 'usual' },
    { fullHours: 12, rampHours: 0, expected: 'longer than usual' },
    { fullHours: 12, rampHours: 1, expected: 'too long' },
    { fullHours: 16, rampHours: 0, expected: 'too long' },
  ])('$fullHours h with ramps of $rampHours h is $expected', ({ expected, ...period }) => {
    expect(dayVerdict(period)).toBe(expected);
  });

  it('never calls more than 12 h of light usual, nor advises it', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 6, noNaN: true }), (rampHours) => {
        const { low, high } = usualFullHoursBeside(rampHours);
        expect(low).toBeLessThanOrEqual(high);
        expect(litHours({ fullHours: high, rampHours })).toBeLessThanOrEqual(12 + 1e-9);
      }),
    );
  });
});
