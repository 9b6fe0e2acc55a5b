import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { LONGEST_LINE, readLine, type Line } from '../../../bot/terminal/read.ts';
import { Problem } from '../../../core/problem.ts';
import { problemOf } from './problem-of.ts';
import { sampleCommands } from './sample.ts';

const read = (line: string): Line => readLine(line, sampleCommands);

/** The kind of a line, or the Problem with it; any other error is thrown on. */
function outcome(line: string): string {
  try {
    return read(line).kind;
  } catch (error) {
    if (error instanceof Problem) return `Problem: ${error.message}`;
    throw error;
  }
}

function amountWith(input: Record<string, unknown>): Line {
  return { kind: 'command', path: ['dose', 'amount'], input };
}
function paceWith(input: Record<string, unknown>): Line {
  return { kind: 'command', path: ['dose', 'pace'], input };
}

describe('a line that can be read', () => {
  it.each<[string, Line]>([
    ['', { kind: 'empty' }],
    [' \t\u00A0 ', { kind: 'empty' }],
    ['7', { kind: 'pick', number: 7 }],
    [' 12 ', { kind: 'pick', number: 12 }],
    ['1250', { kind: 'words', text: '1250' }],
    ['7.2', { kind: 'words', text: '7.2' }],
    ['75 gal', { kind: 'words', text: '75 gal' }],
    ['kh is 5.3, help', { kind: 'words', text: 'kh is 5.3, help' }],
    ['help', { kind: 'help' }],
    ['?', { kind: 'help' }],
    ['/HELP', { kind: 'help' }],
    ['/help dose amount', { kind: 'help', topic: 'dose amount' }],
    ['/quit', { kind: 'quit' }],
    ['exit', { kind: 'quit' }],
    ['/tide', { kind: 'command', path: ['tide'], input: {} }],
    ['/ Tide ', { kind: 'command', path: ['tide'], input: {} }],
    [
      '/dose amount of:alkalinity now:7.2 goal:8.4 with:soda ash volume:75 gal',
      amountWith({ of: 'alkalinity', now: '7.2', goal: '8.4', with: 'soda ash', volume: '75 gal' }),
    ],
    ['/DOSE  Amount   volume:75 gal OF: alkalinity', amountWith({ volume: '75 gal', of: 'alkalinity' })],
    ['/dose amount goal: 8.4   now:\t7.2', amountWith({ goal: '8.4', now: '7.2' })],
    ['/dose amount', amountWith({})],
    [
      '/dose amount of:x:y see https://a.example/now with:b',
      amountWith({ of: 'x:y see https://a.example/now', with: 'b' }),
    ],
    ['/dose amount of:ratio 1:2 colour:red now:7', amountWith({ of: 'ratio 1:2 colour:red', now: '7' })],
    ['/dose amount of:knownow:7 goal:8', amountWith({ of: 'knownow:7', goal: '8' })],
    ['/dose amount volume:3 * 20 L - 10 %', amountWith({ volume: '3 * 20 L - 10 %' })],
    ['/dose amount of:__proto__:1', amountWith({ of: '__proto__:1' })],
    ['/dose pace at:today at 9:30 days:3', paceWith({ at: 'today at 9:30', days: 3 })],
    [
      '/dose pace days:+3 share:-0.5 form:FLAKES gentle:Yes',
      paceWith({ days: 3, share: -0.5, form: 'flakes', gentle: true }),
    ],
    ['/dose pace share:.25 gentle:off', paceWith({ share: 0.25, gentle: false })],
    ['/dose pace at:$& $1 \\', paceWith({ at: '$& $1 \\' })],
  ])('%j', (line, expected) => {
    expect(read(line)).toEqual(expected);
  });
});

interface Refused {
  line: string;
  message: string;
  field?: string;
  given?: string;
  limit?: string;
  hint?: RegExp;
  choices?: readonly string[];
}

describe('a line that cannot be read', () => {
  it.each<Refused>([
    {
      line: '/tid',
      message: 'There is no such command.',
      given: '/tid',
      hint: /Did you mean \/tide\?/,
      choices: ['/tide'],
    },
    { line: '/dsoe amount of:x', message: 'There is no such command.', given: '/dsoe', choices: ['/dose'] },
    { line: '/qqqqqqqq', message: 'There is no such command.', hint: /Type \/help/, choices: [] },
    { line: '/', message: 'There is no such command.', given: '/', choices: [] },
    { line: '/quit now', message: 'There is no such command.', choices: ['/quit'] },
    {
      line: '/dose',
      message: '/dose needs a second word.',
      limit: 'amount, pace',
      choices: ['/dose amount', '/dose pace'],
    },
    { line: '/dose of:alkalinity', message: '/dose needs a second word.', given: '/dose' },
    {
      line: '/dose  ammount of:x',
      message: 'There is no such command.',
      given: '/dose  ammount',
      hint: /amount/,
      choices: ['/dose amount'],
    },
    {
      line: '/dose amount 75 gal',
      message: '"75 gal" stands before the first option.',
      field: 'options',
      hint: /\/dose amount of:/,
    },
    {
      line: '/dose amount please now:7',
      message: '"please" stands before the first option.',
      limit: 'of, now, goal, with, volume',
    },
    {
      line: '/dose amount nwo:7 goal:8',
      message: 'There is no option called nwo in /dose amount.',
      hint: /Did you mean now:\?/,
      choices: ['now:'],
    },
    {
      line: '/dose amount now:7 of:x now:8',
      message: 'now is given more than once.',
      field: 'now',
      given: 'now:7 and now:8',
    },
    { line: '/dose amount now: goal:8', message: 'now has no value.', field: 'now', hint: /reading now/ },
    { line: '/dose amount now:7 goal:', message: 'goal has no value.', field: 'goal' },
    {
      line: '/dose pace days:three',
      message: 'days is not a number I can use.',
      given: 'three',
      limit: 'a whole number such as 12',
    },
    { line: '/dose pace days:2.5', message: 'days is not a number I can use.', given: '2.5' },
    { line: '/dose pace share:1,5', message: 'share is not a number I can use.', given: '1,5' },
    { line: '/dose pace share:1e999', message: 'share is not a number I can use.' },
    { line: `/dose pace days:${'9'.repeat(400)}`, message: 'days is not a number I can use.' },
    {
      line: '/dose pace form:lumps',
      message: 'form takes one of a few values.',
      choices: ['flakes', 'powder'],
    },
    { line: '/dose pace gentle:perhaps', message: 'gentle is yes or no.', choices: ['yes', 'no'] },
    { line: '/tide at:9', message: '/tide takes no options.', given: 'at:9' },
    {
      line: 'x'.repeat(LONGEST_LINE + 1),
      message: 'That line is too long for me to read.',
      given: '4201 characters',
    },
    {
      line: '/'.repeat(1_000_000),
      message: 'That line is too long for me to read.',
      given: '1000000 characters',
    },
  ])('$message', ({ line, ...expected }) => {
    const problem = problemOf(() => read(line));
    const { hint, ...exact } = expected;
    expect(problem).toMatchObject(exact);
    expect(problem.hint ?? '').toMatch(hint ?? '');
  });
});

describe('any line', () => {
  const pieces = fc.constantFrom(
    '/',
    '/dose',
    ' amount',
    ' pace',
    ' now:',
    ' of:',
    ' days:',
    ':',
    '3',
    '\u001B[2J',
    '\u0000',
    ' ',
    'İ',
    '$&',
  );
  const lines = fc.oneof(
    fc.string({ unit: 'binary' }),
    fc.string({ unit: 'grapheme' }).map((text) => `/dose amount ${text}`),
    fc.array(pieces, { maxLength: 30 }).map((parts) => parts.join('')),
  );

  it('is read, or refused with a Problem', () => {
    fc.assert(
      fc.property(lines, (line) => {
        expect(outcome(line)).toMatch(/^(command|words|pick|help|quit|empty|Problem: .+)$/s);
      }),
      { numRuns: 2000 },
    );
  });

  it('keeps every value as typed, in any order', () => {
    const value = fc
      .string({ minLength: 1, maxLength: 40 })
      .map((text) => text.trim())
      .filter((text) => text !== '' && !text.includes(':'));
    const names = fc.shuffledSubarray(['of', 'now', 'goal', 'with', 'volume'], { minLength: 1 });
    fc.assert(
      fc.property(names, fc.array(value, { minLength: 5, maxLength: 5 }), (chosen, values) => {
        const input = Object.fromEntries(chosen.map((name, index) => [name, values[index]]));
        const typed = Object.entries(input).map(([name, text]) => `${name}:${text}`);
        expect(read(`/dose amount ${typed.join(' ')}`)).toEqual(amountWith(input));
      }),
    );
  });
});
