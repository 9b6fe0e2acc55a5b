import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Answer } from '../../../commands/answer.ts';
import type { Command } from '../../../commands/command.ts';
import { convertCommand } from '../../../commands/convert.ts';
import { doseCommands } from '../../../commands/dose.ts';
import { salinityCommands } from '../../../commands/salinity.ts';
import { waterchangeCommands } from '../../../commands/waterchange.ts';
import { Problem } from '../../../core/problem.ts';
import { textOf } from '../text.ts';
import { asked } from './asked.ts';

const commands = [...doseCommands, ...waterchangeCommands, ...salinityCommands, convertCommand];

type Input = Readonly<Record<string, string>>;

/** Every line a member sees, of an answer or of what was asked back. */
function linesOf(
  command: Command,
  input: Input,
): { readonly lines: readonly string[]; readonly isAnswer: boolean } {
  let found: Answer;
  try {
    found = command.run(input, { nowMs: 0 });
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
    const { message, limit = '', hint = '', choices, given = '' } = error;
    return { lines: [message, limit, hint, ...choices, given], isAnswer: false };
  }
  return { lines: textOf(found).split('\n'), isAnswer: true };
}

/** What the member wrote is echoed as written, however many digits it has. */
function withoutGiven(line: string, input: Input): string {
  const given = Object.values(input).flatMap((text) => [
    text,
    text.replace(/^\+/, ''),
    ...(text.match(/[\d.]+/g) ?? []),
  ]);
  const long = given.filter((text) => text.length > 4).sort((a, b) => b.length - a.length);
  const escaped = long.map((each) => each.replace(/[.*+?^${}()|[\]\\/]/g, String.raw`\$&`));
  return escaped.reduce(
    (text, each) => text.replace(new RegExp(String.raw`(?<![\d.])${each}(?![\d.])`, 'g'), '…'),
    line,
  );
}

const NUMBER = /(?<![\d.])\d+(?:\.\d+)?/g;
const MOST_FIGURES = 6;

function figuresOf(number: string): number {
  const digits = number.replace('.', '').replace(/^0+/, '');
  return number.includes('.') ? digits.length : digits.replace(/0+$/, '').length;
}

/** A range: "3.5 to 7.1 dKH", with a unit behind the first end as well or not; not a move "from ... to ...". */
const RANGE =
  /(?<!from |per )(?<![\d.−+])(\d+(?:\.\d+)?)(?: ?(mg\/L|dKH|meq\/L|ppt|g|mL|L|°C|%))? to (\d+(?:\.\d+)?)(?: ?(mg\/L|dKH|meq\/L|ppt|g|mL|L|°C|%|days))?/g;
const MOVES = /\b(?:from|takes|bring|move|now|goal|reading)\b/;

/** What is wrong with the numbers of a line; empty where nothing is. */
function faults(line: string, isAnswer: boolean): readonly string[] {
  const found: string[] = [];
  const check = (isWrong: boolean, what: string): void => {
    if (isWrong) found.push(what);
  };
  check(/\bNaN\b|Infinity|\bundefined\b|\bunknown\b|\[object/.test(line), 'no number');
  check(/\d(?:\.\d+)?e[+-]?\d/.test(line), 'exponent');
  check(/(?<![\d.])-0(?![\d.])/.test(line), 'minus nothing');
  for (const [number] of line.matchAll(NUMBER)) {
    check(figuresOf(number) > MOST_FIGURES, `${number} has too many figures`);
    check(Number(number) > 2e7, `${number} is beyond belief`);
  }
  check(
    /(?<![\d.])(\d+(?:\.\d+)?)( (?!hour\b)[^\s\d,;()]+)? to \1(?:\2)?(?![\d.]|( year))/.test(line),
    'from X to X',
  );
  for (const [, low, unit, high, other] of line.matchAll(RANGE)) {
    const isOneUnit = unit === undefined || unit === other;
    check(isOneUnit && Number(low) > Number(high) && !MOVES.test(line), `${low} to ${high} runs backwards`);
  }
  for (const [, middle, low, high] of line.matchAll(
    /about (\d+(?:\.\d+)?)[^()\d]*\((\d+(?:\.\d+)?) to (\d+(?:\.\d+)?)/g,
  ))
    check(
      Number(middle) < Number(low) || Number(middle) > Number(high),
      `${middle} outside ${low} to ${high}`,
    );
  if (!isAnswer) return found;
  for (const [, share] of line.matchAll(/(\d+(?:\.\d+)?) %(?! of)/g))
    check(Number(share) > 100, `${share} % is more than all`);
  for (const [, level] of line.matchAll(/(\d+(?:\.\d+)?) dKH/g)) check(Number(level) > 165, `${level} dKH`);
  for (const [, level] of line.matchAll(/(\d+(?:\.\d+)?) mg\/L/g))
    check(Number(level) > 20_000, `${level} mg/L`);
  return found;
}

describe.each(Object.entries(asked))('/%s with any numbers', (name, given) => {
  const command = commands.find(({ path }) => path.join(' ') === name);

  it('prints numbers that can be read, believed and that agree', () => {
    if (command === undefined) throw new Error(name);
    fc.assert(
      fc.property(given, (input) => {
        const { lines, isAnswer } = linesOf(command, input);
        for (const line of lines)
          expect(faults(withoutGiven(line, input), isAnswer), `${JSON.stringify(input)}\n${line}`).toEqual(
            [],
          );
      }),
      { numRuns: 5000 },
    );
  }, 120_000);
});
