import * as fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Answer } from '../../../commands/answer.ts';
import { tellingName } from '../../../commands/coral/asked-kind.ts';
import { corals } from '../../../core/corals/coral-list.ts';
import { lightFor } from '../../../core/corals/light-need.ts';
import { origins } from '../../../core/corals/scene.ts';
import { LONG_PLAN_WEEKS } from '../../../core/light/ramp.ts';
import { Problem } from '../../../core/problem.ts';
import { textOf } from '../text.ts';
import { ask } from './asked.ts';

/** 5,000 random inputs of each command, and every number read back from what is printed. */
const RUNS = { numRuns: 5000 };
const PATIENCE = 120_000;

/** As members write it: whole or with some decimals. */
function typed(min: number, max: number): fc.Arbitrary<number> {
  return fc
    .tuple(fc.double({ min, max, noNaN: true }), fc.constantFrom(0, 0, 1, 3))
    .map(([value, places]) => Math.max(min, Number(value.toFixed(places))));
}

function answerOf(run: () => Answer): Answer | undefined {
  try {
    return run();
  } catch (error) {
    if (error instanceof Problem) return undefined;
    throw error;
  }
}

const numberIn = (text: string): number => Number(/[\d.]+/.exec(text)?.[0]);

function expectsNoEcho(given: Answer): void {
  const text = textOf(given);
  for (const [, from, to] of text.matchAll(/from ([\d.]+ (?:PAR|%)) to ([\d.]+ (?:PAR|%))/g))
    expect(from).not.toBe(to);
  expect(text).not.toMatch(/NaN|Infinity|undefined|-\d|\.0*[1-9]\d{4}/);
}

it('/light ramp prints no step above the pace it prints, and ends at the goal', { timeout: PATIENCE }, () => {
  const ends = fc.oneof(
    fc.tuple(fc.constant('PAR'), typed(1, 2500), typed(1, 2500)),
    fc.tuple(fc.constant('PAR'), typed(1, 60), typed(1, 200)),
    fc.tuple(fc.constant('%'), typed(1, 100), typed(1, 100)),
  );
  let raised = 0;
  fc.assert(
    fc.property(ends, fc.option(typed(1, 20), { nil: undefined }), ([unit, now, goal], pace) => {
      const input = { now: `${now} ${unit}`, goal: `${goal} ${unit}` };
      const given = answerOf(() => ask('ramp', pace === undefined ? input : { ...input, pace: `${pace} %` }));
      if (given === undefined) return;
      expectsNoEcho(given);
      const [, from, to, most] =
        /^(?:Raise it from )?([\d.]+) (?:PAR|%) to ([\d.]+) (?:PAR|%).* at most ([\d.]+) % a week/.exec(
          given.headline,
        ) ?? [];
      if (most === undefined) {
        expect(given.headline).toMatch(/^Lower it from|change nothing/);
        return;
      }
      raised++;
      const steps = given.facts
        .filter(({ label }) => label.startsWith('week '))
        .map(({ value }) => numberIn(value));
      for (const [index, value] of steps.entries()) {
        const before = steps[index - 1] ?? Number(from);
        expect(value).toBeGreaterThan(before);
        expect(value / before).toBeLessThanOrEqual(1 + Number(most) / 100 + 1e-9);
      }
      const weeks = Number(/(\d+) weekly steps/.exec(given.headline)?.[1] ?? 1);
      expect(steps).toHaveLength(Math.min(weeks, LONG_PLAN_WEEKS));
      if (weeks <= LONG_PLAN_WEEKS) expect(steps.at(-1)).toBe(Number(to));
    }),
    RUNS,
  );
  expect(raised).toBeGreaterThan(1000);
});

it(
  '/light dim prints a setting that gives no more than the goal, and steps that lead there',
  { timeout: PATIENCE },
  () => {
    let set = 0;
    fc.assert(
      fc.property(typed(1, 600), typed(1, 100), typed(1, 600), (reading, at, goal) => {
        const given = answerOf(() =>
          ask('dim', { reading: `${reading} PAR`, at: `${at} %`, goal: `${goal} PAR` }),
        );
        if (given === undefined) return;
        expectsNoEcho(given);
        const [, setting, wanted] =
          /^Set the lamp to about ([\d.]+) % for ([\d.]+) PAR/.exec(given.headline) ?? [];
        if (setting === undefined) {
          expect(given.headline).toMatch(/^Leave the lamp at|cannot do that here/);
          return;
        }
        set++;
        const [, read, readAt] =
          /^([\d.]+) PAR measured with the lamp at ([\d.]+) %/.exec(given.read[0] ?? '') ?? [];
        const percent = (Number(readAt) * Number(wanted)) / Number(read);
        expect(Number(setting)).toBeLessThanOrEqual(percent + 1e-6);
        expect(Number(setting)).toBeGreaterThan(percent - (percent < 10 ? 0.1 : 1) - 1e-6);
        expect(Number(setting) > Number(readAt)).toBe(Number(wanted) > Number(read));
        const weeks = Number(/Go there in (\d+) weekly steps/.exec(given.headline)?.[1] ?? 1);
        const [next] = given.next;
        if (next === undefined) {
          expect(Number(setting)).toBeLessThanOrEqual(Number(readAt) * 1.1 + 1e-9);
          return;
        }
        const { headline } = ask('ramp', { ...next.input } as Record<string, string>);
        expect(headline).toContain(`${readAt} % to ${setting} %`);
        expect(headline).toContain(` ${weeks} weekly steps`);
      }),
      RUNS,
    );
    expect(set).toBeGreaterThan(1000);
  },
);

const LIGHTING = /([\d.]+) PAR, ([^:]+): ([\d.]+) mol/;

/** "6 h 40 min" -> 6.67. */
function spanHours(text: string): number {
  return Number(/([\d.]+) h/.exec(text)?.[1] ?? 0) + Number(/([\d.]+) min/.exec(text)?.[1] ?? 0) / 60;
}

/** "6 h 40 min full and 2 ramps of 1 h" -> hours that count: a ramp counts half, and there are two. */
function hoursOf(words: string): number {
  const [full = '', ramp = '0 h'] = words.split(' full and 2 ramps of ');
  return spanHours(full) + spanHours(ramp);
}

// Daily light: PAR x hours x 0.0036 mol (definition of the daily light integral), a linear ramp counts half.
it(
  '/light hours prints totals that are those of the peak and the hours beside them',
  { timeout: PATIENCE },
  () => {
    let compared = 0;
    const inputs = fc.record({
      reading: typed(1, 800),
      hours: fc.option(typed(0.25, 16), { nil: undefined }),
      ramp: fc.option(typed(0, 3), { nil: undefined }),
      goal: fc.option(typed(0.25, 16), { nil: undefined }),
      peak: fc.option(typed(1, 800), { nil: undefined }),
    });
    fc.assert(
      fc.property(inputs, ({ reading, hours, ramp, goal, peak }) => {
        const said = {
          reading: `${reading} PAR`,
          hours: hours && `${hours} h`,
          ramp: ramp && `${ramp} h`,
          goal: goal && `${goal} h`,
          peak: peak && `${peak} PAR`,
        };
        const input = Object.entries(said).flatMap(([key, value]) =>
          typeof value === 'string' ? [[key, value]] : [],
        );
        const given = answerOf(() => ask('hours', Object.fromEntries(input) as Record<string, string>));
        if (given === undefined) return;
        expectsNoEcho(given);
        for (const { value } of given.facts) {
          const [, ppfd, words, total] = LIGHTING.exec(value) ?? [];
          if (ppfd === undefined || words === undefined || total === undefined) continue;
          const mol = Number(ppfd) * hoursOf(words) * 0.0036;
          expect(Math.abs(Number(total) - mol)).toBeLessThanOrEqual(
            (Number(total) < 0.1 ? Number(total) * 0.05 : Number(total) < 1 ? 0.005 : 0.05) + 1e-9,
          );
          compared++;
        }
        const [, percent] = /raises the peak by (\d+) %/.exec(textOf(given)) ?? [];
        if (percent !== undefined) expect(Number(percent)).toBeGreaterThan(10);
      }),
      RUNS,
    );
    expect(compared).toBeGreaterThan(5000);
  },
);

it(
  '/light range raises neither light nor lamp by more than the pace it prints',
  { timeout: PATIENCE },
  () => {
    let tables = 0;
    const inputs = fc.record({
      entry: fc.constantFrom(...corals),
      origin: fc.constantFrom(...origins),
      reading: fc.option(typed(1, 600), { nil: undefined }),
      setting: fc.option(typed(1, 100), { nil: undefined }),
    });
    fc.assert(
      fc.property(inputs, ({ entry, origin, reading, setting }) => {
        const given = ask('range', {
          coral: tellingName(entry),
          origin,
          lamp: 'weak',
          ...(reading === undefined ? {} : { reading: `${reading} PAR` }),
          ...(setting === undefined ? {} : { setting: `${setting} %` }),
        });
        expectsNoEcho(given);
        const rows = given.table?.rows ?? [];
        if (rows.length === 0) return;
        tables++;
        const pace = lightFor(entry, origin).raisePercentAWeek;
        if (reading !== undefined) expect(given.steps.join(' ')).toContain(`at most ${pace} %`);
        for (const column of rows[0]?.slice(1).keys() ?? []) {
          const values = rows.map((row) => numberIn(row[column + 1] ?? ''));
          for (const [index, value] of values.slice(1).entries()) {
            const before = values[index] ?? 0;
            expect(value).toBeGreaterThanOrEqual(before);
            expect(value / before).toBeLessThanOrEqual(1 + pace / 100 + 1e-9);
          }
        }
      }),
      { numRuns: 2000 },
    );
    expect(tables).toBeGreaterThan(500);
  },
);
