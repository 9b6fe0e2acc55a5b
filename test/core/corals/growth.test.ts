import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { corals } from '../../../core/corals/coral-list.ts';
import { headCm } from '../../../core/corals/heads.ts';
import { diameterAfter, headsAfter, LONGEST_MONTHS, monthsUntil } from '../../../core/corals/growth.ts';
import { Problem } from '../../../core/problem.ts';
import { kind, placed, spot } from './scenes.ts';
import { real } from './real.ts';

const pair = (id: string, diameterCm = 10) =>
  [placed(1, id, spot(0, 0, 0), { diameterCm }), placed(2, id, spot(50, 0, 0), { diameterCm })] as const;

describe('headsAfter', () => {
  // Common practice: three to six times the heads in a good first year. A head is 7 cm wide (from memory), side by side
  // in a round: 9 cm hold 1, 17.2 cm 6, 9.9 cm 2; a width of 27 cm holds (27 / 7)^2 = 14, not hundreds.
  it.each([
    [7, 12, 1, 6],
    [9.9, 12, 2, 6],
    [7, 0, 1, 1],
    [7, 24, 2, 10],
    [27, 0, 14, 14],
  ])('%d cm after %d months: %d to %d', (diameterCm, months, low, high) => {
    const after = headsAfter(kind('torch-coral'), diameterCm, months);
    expect([after?.low, after?.high]).toEqual([low, high]);
    expect(after?.basis).toContain('common practice');
  });

  it('is only for branching euphyllia types', () => {
    expect(headsAfter(kind('frogspawn-branching'), 10, 12)).toBeDefined();
    expect(headsAfter(kind('hammer-coral-wall'), 10, 12)).toBeUndefined();
    expect(headsAfter(kind('duncan-coral'), 10, 12)).toBeUndefined();
  });
});

describe('every kind in every month', () => {
  const width = fc.double({ min: 0.3, max: 300, noNaN: true });

  it('is an ordered range that never shrinks, nor stops at the usual width', () => {
    fc.assert(
      fc.property(fc.constantFrom(...corals), width, (entry, now) => {
        let [low, high, fewest, most] = [0, 0, 0, 0];
        for (let months = 0; months <= LONGEST_MONTHS; months++) {
          const after = diameterAfter(entry, now, months);
          expect(after.low).toBeLessThanOrEqual(after.high);
          expect(after.low).toBeGreaterThanOrEqual(low);
          expect(after.high).toBeGreaterThanOrEqual(high);
          [low, high] = [after.low, after.high];
          const heads = headsAfter(entry, now, months);
          if (heads === undefined) continue;
          expect(heads.low).toBeLessThanOrEqual(heads.high);
          expect(heads.low).toBeGreaterThanOrEqual(fewest);
          expect(heads.high).toBeGreaterThanOrEqual(most);
          [fewest, most] = [heads.low, heads.high];
          // Places side by side in a round: heads x place is the area of the width, so the square root of it.
          for (const [count, wide] of [
            [fewest, low],
            [most, high],
          ] as const)
            if (count > 1) expect(headCm(entry) * Math.sqrt(count)).toBeLessThanOrEqual(wide + 1e-6);
        }
        if (entry.growth.highCmPerYear > 0) expect(high).toBeGreaterThan(now);
      }),
      { numRuns: 300 },
    );
  });

  it('meets its neighbour in the month in which the widths say so', () => {
    fc.assert(
      fc.property(fc.constantFrom(...corals), real(1, 60), real(0.5, 60), (entry, wide, gap) => {
        const [a, b] = pair(entry.id, wide);
        const months = monthsUntil(a, b, gap)?.soonest;
        if (months === undefined) return;
        // Two alike, each edge moves out by half of the widening; widths are printed to a centimetre.
        const grown = diameterAfter(entry, wide, months).high - wide;
        expect(Math.abs(grown - gap)).toBeLessThanOrEqual(1.01);
      }),
    );
  });
});

describe('diameterAfter', () => {
  it.each([
    // Recalled 2 to 5 cm a year.
    ['torch-coral', 25, 12, 27, 30],
    ['torch-coral', 25, 6, 26, 28],
    ['hammer-coral-wall', 5, 12, 6, 8],
    // One or two heads become six at most in the first year (common practice); a head is 7 cm wide (from memory): 17.15
    // cm, both ends rounded outwards.
    ['torch-coral', 5, 12, 7, 17.2],
    ['torch-coral', 9.9, 24, 13.9, 23],
    // It does not stop at the usual width of 40 cm.
    ['torch-coral', 38, 12, 40, 43],
    ['torch-coral', 50, 12, 52, 55],
    // Published 4 to 15.29 cm a year (Madin et al. 2016), some of it growth of one branch: the high end counts twice.
    ['acropora-staghorn', 10, 12, 14, 41],
  ] as const)('%s of %d cm after %d months: %d to %d', (id, now, months, low, high) => {
    const after = diameterAfter(kind(id), now, months);
    expect(after.low).toBeCloseTo(low, 6);
    expect(after.high).toBeCloseTo(high, 6);
  });

  it('names where the rate comes from', () => {
    expect(diameterAfter(kind('torch-coral'), 5, 12).basis).toContain('from memory');
    expect(diameterAfter(kind('acropora-staghorn'), 5, 12).basis).toContain('Madin et al. 2016');
    expect(() => diameterAfter(kind('torch-coral'), 5, LONGEST_MONTHS + 1)).toThrow(Problem);
  });
});

describe('monthsUntil', () => {
  it('is gap over the speed of both edges', () => {
    // 2 to 5 cm wider a year each (from memory): edges 1 to 2.5, together 2 to 5 cm a year; 10 cm -> 24 to 60 months.
    const [a, b] = pair('torch-coral', 25);
    expect(monthsUntil(a, b, 10)?.soonest).toBeCloseTo(24, 9);
    expect(monthsUntil(a, b, 10)?.latest).toBeCloseTo(60, 9);
    expect(monthsUntil(a, b, 10, 5)?.soonest).toBeCloseTo(12, 9);
    expect(monthsUntil(a, b, 10.1)?.latest).toBeUndefined();
  });

  it('is sooner for pieces of few heads, and slower after their first year', () => {
    // One head of 7 cm -> six of 17.2 cm: both edges together 10.2 cm in the first year, then 5 cm a year.
    const [a, b] = pair('torch-coral', 7);
    expect(monthsUntil(a, b, 5.1)?.soonest).toBeCloseTo(6, 9);
    expect(monthsUntil(a, b, 12.7)?.soonest).toBeCloseTo(18, 9);
  });

  it('is never when they do not come within five years', () => {
    const [a, b] = pair('torch-coral', 25);
    expect(monthsUntil(a, b, 26)).toBeUndefined();
  });

  it('counts only the edge that moves when the other may not grow at all', () => {
    // Carnation corals 0 to 5, duncans 2 to 5 cm a year wider: 3 cm at 1 cm a year, or at 5.
    const a = placed(1, 'carnation-dendronephthya', spot(0, 0, 0));
    const b = placed(2, 'duncan-coral', spot(23, 0, 0));
    expect(monthsUntil(a, b, 3)?.soonest).toBeCloseTo(7.2, 9);
    expect(monthsUntil(a, b, 3)?.latest).toBeCloseTo(36, 9);
  });

  it('is now when they are that close already', () => {
    const [a, b] = pair('torch-coral');
    expect(monthsUntil(a, b, 3, 3)).toEqual({ soonest: 0, latest: 0 });
  });

  it('comes no sooner for a wider gap, and the soonest before the latest', () => {
    const gap = real(0, 60);
    const width = real(1, 60);
    fc.assert(
      fc.property(
        fc.constantFrom(...corals),
        fc.constantFrom(...corals),
        width,
        width,
        gap,
        gap,
        (one, other, wide, wider, near, more) => {
          const a = placed(1, one.id, spot(0, 0, 0), { diameterCm: wide });
          const b = placed(2, other.id, spot(0, 0, 0), { diameterCm: wider });
          const first = monthsUntil(a, b, near);
          const second = monthsUntil(a, b, near + more);
          if (second !== undefined) expect(first?.soonest).toBeLessThanOrEqual(second.soonest + 1e-9);
          if (first?.latest !== undefined) expect(first.latest).toBeGreaterThanOrEqual(first.soonest - 1e-9);
          expect(Number.isNaN(first?.soonest ?? 0)).toBe(false);
        },
      ),
    );
  });
});
