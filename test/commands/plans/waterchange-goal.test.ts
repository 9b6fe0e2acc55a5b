import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { waterchangeCommands } from '../../../commands/waterchange.ts';
import { Problem } from '../../../core/problem.ts';
import { runner } from '../text.ts';
import { afterGuard, amountIn } from './printed.ts';

const ask = runner(waterchangeCommands);

const asked = fc.record({
  of: fc.constantFrom('nitrate' as const, 'phosphate' as const),
  now: fc.double({ min: 0.05, max: 1, noNaN: true }),
  goal: fc.double({ min: 0.02, max: 0.95, noNaN: true }),
  share: fc.integer({ min: 1, max: 99 }),
  every: fc.constantFrom(1, 2, 7, 14),
  litres: fc.double({ min: 1, max: 4, noNaN: true }).map((power) => Number((10 ** power).toPrecision(4))),
  rise: fc.constantFrom(0, 0.01, 0.05),
});

const scale = { nitrate: 150, phosphate: 2.5 } as const;
const digit = { nitrate: 0.1, phosphate: 0.001 } as const;

describe('/waterchange goal, as printed', () => {
  it('pours what it says in all, and each change brings the level down to the goal', () => {
    fc.assert(
      fc.property(asked, ({ of, now, goal, share, every, litres, rise }) => {
        const from = Number((now * scale[of]).toFixed(3));
        const to = Number((goal * from).toFixed(3));
        const climbs = Number((rise * from).toFixed(3));
        fc.pre(to > 0 && from - to > 2 * digit[of]);
        let found;
        try {
          found = ask('goal', {
            sure: 'yes',
            of,
            now: `${from} ppm`,
            goal: `${to} ppm`,
            share: `${share} %`,
            every: `${every} days`,
            volume: `${litres} L`,
            ...(climbs > 0 ? { rise: `${(climbs / every) * 7} ppm a week` } : {}),
          });
        } catch (error) {
          expect(error).toBeInstanceOf(Problem);
          return;
        }
        const { facts, working } = found;
        const headline = afterGuard(found.headline);
        const times = Number(/^(\d+) changes? of/.exec(headline)?.[1]);
        if (Number.isNaN(times)) {
          expect(headline).toMatch(/never gets to|Nothing to (?:do|change)/);
          return;
        }
        const [, each = ''] = /\(([\d.]+ m?L) each\)/.exec(headline) ?? [];
        const water = facts.find(({ label }) => label === 'new water and time')?.value ?? '';
        const [, all = ''] = /^([\d.]+ m?L) in all/.exec(water) ?? [];
        expect(amountIn(all)).toBeCloseTo(times * amountIn(each), 6);
        expect(amountIn(each)).toBeLessThanOrEqual((litres * share) / 100 + 1e-9);
        expect(amountIn(each)).toBeGreaterThan((litres * share) / 100 - 0.0101 * amountIn(each));
        // c1 = c0 (1 - f), then the rise (mass balance by hand).
        let level = from;
        const levels = Array.from({ length: times }, (_, change) => {
          level = (change === 0 ? level : level + climbs) * (1 - share / 100);
          return level;
        });
        const printed = (/just after each change: (.*?)(?:, \.\.\.)?$/.exec(working[1] ?? '')?.[1] ?? '')
          .split(', ')
          .map((text) => Number.parseFloat(text));
        printed.forEach((value, change) => {
          expect(Math.abs(value - (levels[change] ?? Number.NaN))).toBeLessThanOrEqual(digit[of] * 0.501);
          expect(value).toBeLessThanOrEqual(printed[change - 1] ?? from);
        });
        const last = Number.parseFloat(
          facts.find(({ label }) => label === 'after the last change')?.value ?? '',
        );
        expect(Math.abs(last - (levels.at(-1) ?? Number.NaN))).toBeLessThanOrEqual(digit[of] * 0.501);
        expect(last).toBeLessThanOrEqual(to + digit[of] / 2);
        if (times > 1) expect(levels.at(-2)).toBeGreaterThan(to - 1e-9);
        const days = Number(/, ([\d.]+) days? from the first/.exec(water)?.[1] ?? 0);
        expect(days).toBeCloseTo(every * (times - 1), 1);
      }),
      { numRuns: 5000 },
    );
  }, 120_000);
});
