import * as fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Answer } from '../../../commands/answer.ts';
import { tellingName } from '../../../commands/coral/asked-kind.ts';
import { corals } from '../../../core/corals/coral-list.ts';
import { lampIds } from '../../../core/light/lamp.ts';
import { lampStrengths } from '../../../core/corals/light-need.ts';
import { origins } from '../../../core/corals/scene.ts';
import { Problem } from '../../../core/problem.ts';
import { textOf } from '../text.ts';
import { run, twoPersons } from './person.ts';

const amount = (min: number, max: number) =>
  fc
    .tuple(fc.double({ min, max, noNaN: true }), fc.constantFrom(0, 0, 1, 2, 5))
    .map(([value, places]) => value.toFixed(places));
const worded = (text: (value: string) => string, min: number, max: number) => amount(min, max).map(text);
const name = fc.constantFrom(...corals.map(tellingName));
const id = fc.integer({ min: 1, max: 14 }).map(String);
const spot = fc.oneof(
  fc.constantFrom(
    'left, back, low',
    'right, front, sand',
    'centre, middle, high',
    'left, 10 cm from the front, low',
  ),
  fc.tuple(amount(0, 120), amount(0, 50), amount(0, 45)).map(([x, y, z]) => `${x} x ${y} x ${z} cm`),
);
const size = fc.oneof(
  worded((value) => `${value} cm`, 0.3, 60),
  worded((value) => `${value} in`, 0.2, 20),
  fc.integer({ min: 1, max: 40 }).map((heads) => `${heads} heads`),
);
const par = worded((value) => `${value} PAR`, 1, 600);
const share = worded((value) => `${value} %`, 1, 100);

/** A command with random options, those in `maybe` left out now and then. */
function asked(
  command: string,
  must: Record<string, fc.Arbitrary<string>>,
  maybe: Record<string, fc.Arbitrary<string>> = {},
) {
  return fc
    .record({ ...must, ...maybe }, { requiredKeys: Object.keys(must) })
    .map((input) => ({ command, input }));
}

const anything = fc.oneof(
  asked(
    'light range',
    { coral: name },
    {
      origin: fc.constantFrom(...origins),
      reading: par,
      setting: share,
      lamp: fc.constantFrom(...lampStrengths),
      at: spot,
    },
  ),
  asked(
    'light lux',
    { reading: worded((value) => `${value} lux`, 1, 90_000) },
    { lamp: fc.constantFrom(...lampIds) },
  ),
  asked('light measured', { at: spot, par: amount(1, 700) }),
  asked('light measured', {}, { remove: id }),
  asked(
    'coral add',
    { coral: name, at: spot, size },
    { origin: fc.constantFrom(...origins), since: fc.constantFrom('today', '2026-01-03') },
  ),
  asked('coral move', { coral: id }, { at: spot, size }),
  asked('coral remove', { coral: id }),
  asked('coral check', {}, { coral: id }),
  asked('coral list', {}),
  asked('coral map', {}),
  asked('coral about', { coral: name }),
  asked('coral compare', { a: name, b: name }, { c: name }),
  asked('coral growth', { coral: fc.oneof(name, id) }, { size }),
  asked(
    'coral suited',
    {},
    { level: fc.constantFrom('first year', 'many years'), at: spot, par, wish: name },
  ),
  asked(
    'coral feed',
    { food: fc.constantFrom('frozen', 'flake', 'pellet'), mass: worded((value) => `${value} g`, 0.01, 50) },
    { volume: worded((value) => `${value} L`, 1, 2000), protein: share, coral: name },
  ),
);

/** Everything said, the table too; what a button would type is the member's own text. */
function printed(given: Answer): string {
  const { table } = given;
  const rows = table === undefined ? [] : [table.head, ...table.rows].map((row) => row.join(' | '));
  return [textOf({ ...given, next: [] }), ...rows].join('\n');
}

const span = (unit: string) => new RegExp(`(?<![\\d.x] |[\\d.])([\\d.]+) to ([\\d.]+) ${unit}`, 'g');
const UNITS = ['cm', 'PAR', '%', 'months', 'mg/L', 'mg'];

function faultsOf(text: string): readonly string[] {
  const patterns = [
    [/\.0*[1-9]\d{4,}/, 'more than four figures behind the point'],
    [/\b(?:NaN|Infinity|undefined|null)\b/, 'no number'],
    [/(?<![\w.)\]])-0(?![.\d])/, 'minus zero'],
    [/(?<![\w.)\]-])-\d[\d.]* ?(?:cm|%|PAR|months)/, 'below zero'],
    [/\b1 (?:weeks|months|heads|corals|readings|wild values)\b/, 'one of many'],
    [/\b0 (?:to \d+ )?months?\b/, 'no months'],
  ] as const;
  const spans = UNITS.flatMap((unit) => [...text.matchAll(span(unit))]);
  const middles = [
    ...text.matchAll(/about ([\d.]+) PAR, somewhere in ([\d.]+) to ([\d.]+) PAR/g),
    ...text.matchAll(/about ([\d.]+) cm apart \(([\d.]+) to ([\d.]+) cm/g),
  ];
  return [
    ...patterns.flatMap(([pattern, what]) =>
      pattern.test(text) ? [`${what}: ${pattern.exec(text)?.[0]}`] : [],
    ),
    ...spans.flatMap(([all, low, high]) => (Number(low) < Number(high) ? [] : [`no range: ${all}`])),
    ...middles.flatMap(([all, middle, low, high]) =>
      Number(middle) >= Number(low) && Number(middle) <= Number(high) ? [] : [`middle outside: ${all}`],
    ),
  ];
}

it(
  'prints no raw, negative or backward number in whatever is asked of corals and light',
  { timeout: 180_000 },
  () => {
    let answered = 0;
    fc.assert(
      fc.property(fc.array(anything, { minLength: 20, maxLength: 40 }), (session) => {
        const [ada] = twoPersons();
        for (const { command, input } of session) {
          try {
            const given = run(ada.keep, command, input);
            answered++;
            expect(faultsOf(printed(given)), `${command} ${JSON.stringify(input)}`).toEqual([]);
          } catch (error) {
            if (!(error instanceof Problem)) throw error;
            const { message, limit, hint } = error;
            expect(faultsOf([message, limit, hint].join('\n').replaceAll(/undefined/g, ''))).toEqual([]);
          }
        }
      }),
      { numRuns: 40 },
    );
    expect(answered).toBeGreaterThan(500);
  },
);
