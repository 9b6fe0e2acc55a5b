import type { Command } from '../../commands/command.ts';
import { optionsOf, type Option } from '../../commands/options.ts';
import { Problem } from '../../core/problem.ts';
import { nameOf } from '../../commands/named.ts';
import { nearest } from '../../commands/nearest.ts';
import { say } from '../../core/wording/say.ts';
import { literally, shortened } from './plain.ts';

/** A known option's name with its colon, and where in the text its value starts. */
export interface Marker {
  readonly option: Option;
  readonly start: number;
  readonly valueStart: number;
}

/** Every known option name followed by a colon, in the order typed. Other words with colons are not markers. */
export function markers(text: string, options: readonly Option[]): readonly Marker[] {
  if (options.length === 0) return [];
  const names = options.map(({ name }) => literally(name)).join('|');
  return [...text.matchAll(new RegExp(String.raw`(?<=^|\s)(${names}):`, 'gi'))].flatMap((found) => {
    const option = options.find(({ name }) => name.toLowerCase() === found[1]?.toLowerCase());
    return option === undefined
      ? []
      : [{ option, start: found.index, valueStart: found.index + found[0].length }];
  });
}

/**
 * Reads `of:alkalinity now: 7.2 dKH` as values of a command's options, each to the next known name.
 *
 * @throws Problem for text before the first option, an option given twice or without a value, or a wrong value.
 */
export function readValues(text: string, command: Command): Readonly<Record<string, unknown>> {
  if (command.takesAnything === true) return asTyped(text, command);
  const found = markers(text, optionsOf(command.options));
  const before = text.slice(0, found[0]?.start).trim();
  if (before !== '') throw stray(before, command);
  const entries = found.map(({ option, valueStart }, index) => {
    if (found.findIndex((other) => other.option === option) < index) throw twice(option, found, text);
    return [option.name, valueOf(option, text.slice(valueStart, found[index + 1]?.start).trim())] as const;
  });
  return Object.fromEntries(entries);
}

/**
 * The same without a Problem, for a command that names itself what it cannot take. What is given twice stands together,
 * and words alone belong to its first option.
 */
function asTyped(text: string, command: Command): Readonly<Record<string, string>> {
  const options = optionsOf(command.options);
  const input: Record<string, string> = {};
  for (const part of text.trim().split(/\s+(?=[a-z]+:)/i)) {
    const [, word = options[0]?.name ?? '', value = ''] = /^(?:([a-z]+):)?(.*)$/is.exec(part) ?? [];
    const name = word.toLowerCase();
    const choice = options
      .find((option) => option.name === name)
      ?.choices?.find((each) => each === value.trim().toLowerCase());
    const typed = choice ?? value.trim();
    if (part !== '') input[name] = name in input ? `${input[name] ?? ''} and ${typed}` : typed;
  }
  return input;
}

/** A typed value in the kind its option takes. @throws Problem with what is accepted. */
export function valueOf(option: Option, text: string): string | number | boolean {
  const { name: field, kind, choices } = option;
  if (text === '')
    throw new Problem(say('terminal.noValue', { option: field }), { field, hint: option.description });
  if (kind === 'boolean') {
    if (/^(yes|true|on|y)$/i.test(text)) return true;
    if (/^(no|false|off|n)$/i.test(text)) return false;
    throw new Problem(say('terminal.yesOrNo', { option: field }), {
      field,
      given: text,
      choices: ['yes', 'no'],
    });
  }
  if (kind === 'integer' || kind === 'number') return numberOf(option, text);
  if (choices === undefined) return text;
  const chosen = choices.find((choice) => choice.toLowerCase() === text.toLowerCase());
  if (chosen !== undefined) return chosen;
  throw new Problem(say('terminal.oneOfFew', { option: field }), { field, given: text, choices });
}

function numberOf({ name: field, kind }: Option, text: string): number {
  const pattern = kind === 'integer' ? /^[+-]?\d+$/ : /^[+-]?(\d+(\.\d*)?|\.\d+)$/;
  const value = pattern.test(text) ? Number(text) : Number.NaN;
  if (Number.isFinite(value)) return value;
  const limit = say(kind === 'integer' ? 'terminal.limitWhole' : 'terminal.limitNumber');
  throw new Problem(say('terminal.noUsableNumber', { option: field }), { field, given: text, limit });
}

function stray(before: string, command: Command): Problem {
  const names = optionsOf(command.options).map(({ name }) => name);
  const name = `/${nameOf(command)}`;
  if (names.length === 0) {
    return new Problem(say('terminal.noOptions', { command: name }), {
      field: 'options',
      given: before,
      hint: say('terminal.hintAlone', { command: name }),
    });
  }
  const [written, word = ''] = /^([\w-]+)\s*:/.exec(before) ?? [];
  if (written === undefined) {
    return new Problem(say('terminal.strayWords', { words: shortened(before, 60) }), {
      field: 'options',
      given: before,
      limit: names.join(', '),
      hint: say('terminal.hintOptions', { example: command.example }),
    });
  }
  const near = nearest(word, names);
  return new Problem(say('terminal.noSuchOption', { option: shortened(word, 60), command: name }), {
    field: 'options',
    given: written,
    limit: names.join(', '),
    hint: near === undefined ? undefined : say('terminal.didYouMean', { name: `${near}:` }),
    choices: near === undefined ? [] : [`${near}:`],
  });
}

function twice(option: Option, found: readonly Marker[], text: string): Problem {
  const both = found.flatMap((marker, index) =>
    marker.option === option ? [text.slice(marker.start, found[index + 1]?.start).trim()] : [],
  );
  return new Problem(say('terminal.optionTwice', { option: option.name }), {
    field: option.name,
    given: both.reduce((one, other) => say('terminal.oneAndOther', { one, other })),
    hint: say('terminal.hintOnce'),
  });
}
