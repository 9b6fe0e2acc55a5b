import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { corals } from '../../../core/corals/coral-list.ts';
import { diameterAfter, headsAfter, LONGEST_MONTHS, monthsUntil } from '../../../core/corals/growth.ts';
import { Problem } from '../../../core/problem.ts';
import { kind, placed, spot } from './scenes.ts';
import { real } from './real.ts';

const pair = (id: string, diameterCm = 10) =>
  [placed(1, id, spot(0, 0, 0), { diameterCm }), placed(2, id, spot(50, 0, 0), { diameterCm })] as const;

describe('headsAfter', () => {
  // Common practice: one or two heads become about six in the first year, then roughly exponential.
  it.each([
    [1, 12, 3, 6],
    [2, 12, 6, 12],
    [1, 0, 1, 1],
    [1, 24, 9, 36],
    [2, 6, 3.4641, 4.899],
  ])('%d heads after %d months: %d to %d', (heads, months, low, high) => {
    const after = headsAfter(kind('torch-coral'), heads, months);
    expect(after?.low).toBeCloseTo(low, 3);
    expect(after?.high).toBeCloseTo(high, 3);
    expect(after?.basis).toContain('common practice');
  });

  it('is only for branching euphyllia types', () => {
    expect(headsAfter(kind('frogspawn-branching'), 2, 12)).toBeDefined();
    expect(headsAfter(kind('hammer-coral-wall'), 2, 12)).toBeUndefined();
    expect(headsAfter(kind('duncan-coral'), 2, 12)).toBeUndefined();
  });
});

describe('diameterAfter', () => {
  it.each([
    // Recalled 2 to 5 cm a year.
    ['torch-coral', 10, 12, 12, 15],
    ['torch-coral', 10, 6, 11, 12.5],
    ['hammer-coral-wall', 5, 12, 6, 8],
    // One or two heads become about six in the first year (common practice); a head is 7 cm wide (from memory): 17.15 cm.
    ['torch-coral', 5, 12, 7, 17.146428],
    ['torch-coral', 9.8994, 24, 13.8994, 22.146428],
    // Never beyond the usual width of 40 cm, nor below what it is.
    ['torch-coral', 38, 12, 40, 40],
    ['torch-coral', 50, 12, 50, 50],
    // Published 4 to 15.29 cm a year (Madin et al. 2016), some of it growth of one branch: the high end counts twice.
    ['acropora-staghorn', 10, 12, 14, 40.58],
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
    // 2 to 5 cm wider a year each: edges 1 to 2.5, together 2 to 5 cm a year; 10 cm -> 24 to 60 months.
    const [a, b] = pair('torch-coral');
    expect(monthsUntil(a, b, 10)?.soonest).toBeCloseTo(24, 9);
    expect(monthsUntil(a, b, 10)?.latest).toBeCloseTo(60, 9);
    expect(monthsUntil(a, b, 10, 5)?.soonest).toBeCloseTo(12, 9);
    expect(monthsUntil(a, b, 10.1)?.latest).toBeUndefined();
  });

  it('is never when both stop short of it, or not within five years', () => {
    const [a, b] = pair('scolymia-australis', 11);
    expect(monthsUntil(a, b, 2)).toBeUndefined();
    const [c, d] = pair('torch-coral');
    expect(monthsUntil(c, d, 26)).toBeUndefined();
  });

  it('goes on with one edge when the other has its usual width', () => {
    // A torch with its full width stands still: only 2.5 cm a year is left.
    const [a] = pair('torch-coral', 40);
    const [, b] = pair('torch-coral', 10);
    expect(monthsUntil(a, b, 5)?.soonest).toBeCloseTo(24, 9);
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
