import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { useCommand } from '../../../commands/dose/use.ts';
import { trendCommand } from '../../../commands/log/trend.ts';
import { DAY_MS, factOf, member, START_MS } from './member.ts';

/** Tests at whole days after the start, and doses half a day later, of a tank that uses a known amount. */
const logs = fc.record({
  of: fc.constantFrom(
    { id: 'alkalinity' as const, level: 8.5, scale: 1, digits: 1 },
    { id: 'calcium' as const, level: 430, scale: 8, digits: 0 },
    { id: 'magnesium' as const, level: 1350, scale: 20, digits: 0 },
  ),
  perDay: fc.double({ min: 0, max: 0.5, noNaN: true }),
  gaps: fc.array(fc.integer({ min: 1, max: 6 }), { minLength: 1, maxLength: 14 }),
  errors: fc.array(fc.double({ min: -0.3, max: 0.3, noNaN: true }), { minLength: 15, maxLength: 15 }),
  kept: fc.double({ min: 0, max: 1.2, noNaN: true }),
});

const numbers = (text: string): readonly number[] => (text.match(/\d+(?:\.\d+)?/g) ?? []).map(Number);

describe('the use a log tells', () => {
  it('is the same from /dose use and /log trend, to the printed digit, with its middle in its range', () => {
    fc.assert(
      fc.property(logs, ({ of, perDay, gaps, errors, kept }) => {
        const { keep, tank, run, wait } = member();
        const { id, level, scale, digits } = of;
        const use = perDay * scale;
        let day = 0;
        let value = level;
        const log = (at: number, index: number): void => {
          const read = Number((value + (errors[index] ?? 0) * scale).toFixed(digits));
          keep.addEntry(tank.id, { atMs: START_MS + at * DAY_MS, values: [{ parameter: id, value: read }] });
        };
        log(0, 0);
        gaps.forEach((gap, index) => {
          const rise = Number((use * gap * kept).toFixed(2));
          const atMs = START_MS + (day + 0.5) * DAY_MS;
          if (rise > 0) keep.addAddition(tank.id, { atMs, parameter: id, rise });
          day += gap;
          value += rise - use * gap;
          log(day, index + 1);
        });
        wait(day + 1);
        const said = run(useCommand, { of: id }).headline;
        const trend = run(trendCommand, { of: id });
        const label = `${id.charAt(0).toUpperCase()}${id.slice(1)} used`;
        const fact = factOf(trend, label) ?? '';
        if (said.startsWith('No use to be seen')) {
          expect(fact).toMatch(/^no use to be seen/);
          return;
        }
        if (/^\w+ rose by/.test(said)) {
          expect(fact).toMatch(/^none: it rose by itself/);
        } else expect(said).toMatch(/^The tank uses about/);
        const [best = 0, from = 0, to = 0] = numbers(said);
        expect(numbers(fact).slice(0, 3)).toEqual([best, from, to]);
        expect(from).toBeLessThanOrEqual(best);
        expect(best).toBeLessThanOrEqual(to);
      }),
      { numRuns: 400 },
    );
  }, 120_000);
});
