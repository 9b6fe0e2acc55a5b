import * as fc from 'fast-check';
import { definitionOf, quantities, type QuantityKind } from '../core/quantity/unit.ts';
import { asked } from './corpus.ts';

const kinds = Object.keys(quantities) as QuantityKind[];
const units = [
  ...new Set(
    kinds.flatMap((kind) => definitionOf(kind).units.flatMap((unit) => [unit.symbol, ...unit.names])),
  ),
];

/** Fragments that break readers: markup, pings, invisible characters, code, odd numbers, every unit. */
const fragment = fc.oneof(
  fc.constantFrom(
    '@everyone',
    '@here',
    '<@123456789012345678>',
    '||',
    '```',
    '**',
    '\u200B',
    '\u202E',
    '\u0000',
    '\u001B[31m',
    '\uD800',
    '😬',
    '½',
    '٣',
    '１２',
    'NaN',
    'Infinity',
    '-0',
    '1e308',
    '1e-320',
    '1/0',
    '0/0',
    '2^9999',
    '%',
    '%%',
    '- 10 %',
    '(',
    ')',
    '((((',
    '[1]',
    '{a:1}',
    'import("fs")',
    'f(x)=x',
    'x x x',
    ',,',
    '..',
    '1.2.3',
    '1,2,3',
    '1,350',
    '1.350,5',
    '__proto__',
    'constructor',
    'u0',
    'u1',
    '/',
    ':',
    '->',
    'to',
    'of',
    'now:',
    'goal:',
  ),
  fc.constantFrom(...units),
  fc.constantFrom(...Object.values(asked)),
  fc.double({ noDefaultInfinity: false }).map(String),
  fc.integer({ min: -10_000, max: 10_000 }).map(String),
  fc.string({ unit: 'binary', maxLength: 20 }),
);

/** Random and hostile text, now and then thousands of characters long. */
export const hostileText = fc.oneof(
  {
    weight: 20,
    arbitrary: fc.array(fragment, { minLength: 1, maxLength: 6 }).map((parts) => parts.join(' ')),
  },
  { weight: 5, arbitrary: fc.array(fragment, { minLength: 1, maxLength: 6 }).map((parts) => parts.join('')) },
  {
    weight: 1,
    arbitrary: fc
      .tuple(fragment, fc.integer({ min: 50, max: 400 }))
      .map(([part, times]) => part.repeat(times).slice(0, 4000)),
  },
);

/** The same 20,000 texts on every run; a failure names the text itself. */
export const hostileSample = (seed: number, count = 20_000): string[] =>
  fc.sample(hostileText, { numRuns: count, seed });
