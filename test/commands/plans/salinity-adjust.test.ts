import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { salinityCommands } from '../../../commands/salinity.ts';
import { Problem } from '../../../core/problem.ts';
import { runner } from '../text.ts';
import { amountIn, sumOf } from './printed.ts';

const ask = runner(salinityCommands);

const asked = fc.record({
  now: fc.double({ min: 20, max: 41.9, noNaN: true }).map((s) => Number(s.toFixed(2))),
  goal: fc.double({ min: 25, max: 36, noNaN: true }).map((s) => Number(s.toFixed(2))),
  litres: fc.double({ min: 1, max: 3.5, noNaN: true }).map((power) => Number((10 ** power).toPrecision(4))),
  pace: fc.constantFrom(undefined, 0.1, 0.35, 0.5, 0.99, 1, 1.25, 2),
});

/** Mass balance of a well-mixed tank, by hand: a part of its water swapped for water of another salinity. */
const swapped = (now: number, source: number, part: number): number => now + (source - now) * part;

describe('/salinity adjust, as printed', () => {
  it('swaps what it says in all, a day no further than the pace, level by level to the goal', () => {
    fc.assert(
      fc.property(asked, ({ now, goal, litres, pace }) => {
        fc.pre(Math.abs(now - goal) >= 0.3);
        let found;
        try {
          found = ask('adjust', {
            sure: 'yes',
            now: `${now} ppt`,
            goal: `${goal} ppt`,
            volume: `${litres} L`,
            ...(pace === undefined ? {} : { pace: `${pace} ppt` }),
          });
        } catch (error) {
          expect(error).toBeInstanceOf(Problem);
          expect((error as Problem).message).toMatch(/it would take \d+ days/);
          return;
        }
        const { facts, read } = found;
        // What has no room behind an urgent salinity, or a goal that is unusual, is among the first facts.
        const headline = [found.headline, ...facts.slice(0, 3).map(({ value }) => value)].join(' ');
        const days = facts.filter(({ label }) => /^day \d+$/.test(label));
        const printedPace = Number(/pace ([\d.]+) ppt/.exec(read.join('\n'))?.[1]);
        const pours = days.map(({ value }) => amountIn(value));
        const levels = days.map(({ value }) => Number(/ends at ([\d.]+) ppt/.exec(value)?.[1]));
        const source = now > goal ? 0 : Math.min(goal + 5, 42);
        const total = /, ([\d.]+ m?L) in all/.exec(headline)?.[1];
        if (days.length > 1) {
          expect(headline).toContain(`Over ${days.length} days`);
          expect(amountIn(total ?? '')).toBeCloseTo(sumOf(pours), 6);
        }
        let level = now;
        let printed = now;
        const way = Math.sign(goal - now);
        pours.forEach((pour, day) => {
          const next = swapped(level, source, pour / litres);
          expect(Math.abs(next - level)).toBeLessThanOrEqual(printedPace * (1 + 1e-9));
          expect(way * ((levels[day] ?? Number.NaN) - printed)).toBeGreaterThanOrEqual(0);
          if (day > 0)
            expect(Math.abs((levels[day] ?? Number.NaN) - printed)).toBeLessThanOrEqual(printedPace + 1e-9);
          level = next;
          printed = levels[day] ?? Number.NaN;
        });
        expect(printed).toBe(goal);
        // Rounding a pour down takes off at most a hundredth of each step.
        expect(way * (goal - level)).toBeGreaterThan(-1e-6);
        expect(Math.abs(goal - level)).toBeLessThan(0.01 * Math.abs(goal - now) + 1e-6);
        expect((days.length - 1) * printedPace).toBeLessThan(Math.abs(goal - now) + 1e-6);
      }),
      { numRuns: 5000 },
    );
  }, 120_000);

  it('prints gravities that keep to a pace in gravity', () => {
    const gravity = fc.integer({ min: 180, max: 315 }).map((points) => (1 + points / 10_000).toFixed(4));
    const pace = fc.constantFrom('0.001', '0.0005', '0.00075', '0.002', undefined);
    fc.assert(
      fc.property(gravity, gravity, pace, (now, goal, most) => {
        fc.pre(Number(goal) < 1.028);
        fc.pre(Math.abs(Number(now) - Number(goal)) > 0.0005);
        const found = ask('adjust', {
          sure: 'yes',
          now,
          goal,
          volume: '75 gal',
          ...(most === undefined ? {} : { pace: most }),
        });
        const printedPace = Math.round(Number(/pace ([\d.]+) SG/.exec(found.read.join('\n'))?.[1]) * 1e4);
        const levels = found.facts.flatMap(({ value }) => {
          const level = /ends at [\d.]+ ppt \(([\d.]+) SG\)/.exec(value)?.[1];
          return level === undefined ? [] : [Math.round(Number(level) * 1e4)];
        });
        expect(levels.at(-1)).toBe(Math.round(Number(goal) * 1e4));
        levels.forEach((level, day) => {
          const step = Math.abs(level - (levels[day - 1] ?? Math.round(Number(now) * 1e4)));
          expect(step).toBeGreaterThan(0);
          expect(step).toBeLessThanOrEqual(printedPace);
        });
      }),
      { numRuns: 5000 },
    );
  }, 60_000);
});
