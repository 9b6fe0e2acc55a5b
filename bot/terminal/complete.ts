import { localeInForce } from '../../core/wording/in-locale.ts';
import type { Command } from '../../commands/command.ts';
import type { Keep } from '../../commands/keep.ts';
import { optionsOf } from '../../commands/options.ts';
import { suggest } from '../../commands/suggest.ts';
import { nameOf } from '../../commands/named.ts';
import { offeredHere, roomWords } from './name.ts';
import { markers, type Marker } from './values.ts';

/** Texts that can take the place of the last part of the line, and that part, as readline asks for them. */
export type Completions = [string[], string];

/** What Tab offers after `line`: names of commands, then options not used yet and their values. */
export function complete(line: string, commands: readonly Command[], keep: Keep): Completions {
  const [, slash, words] = /^(\s*\/?)(.*)$/s.exec(line) ?? [];
  if (words === undefined || (words !== '' && !slash?.includes('/'))) return [[], line];
  if (slash?.includes('/') !== true)
    return [topNames(offeredHere(commands)).map((name) => `/${name} `), line];
  const named = /^(help\s+)(.*)$/is.exec(words);
  if (named !== null) return nameEndings(named[2] ?? '', offeredHere(commands).map(nameOf));
  const found = commands
    .filter((command) => words.toLowerCase().startsWith(`${nameOf(command)} `))
    .sort((a, b) => nameOf(b).length - nameOf(a).length)[0];
  if (found !== undefined) return completeOptions(words.slice(nameOf(found).length + 1), found, keep);
  return nameEndings(words, [...offeredHere(commands).map(nameOf), ...roomWords]);
}

function topNames(commands: readonly Command[]): readonly string[] {
  return [...new Set([...commands.map(({ path }) => path[0]), ...roomWords])];
}

/** The next word of every name that begins with what is typed. */
function nameEndings(typed: string, names: readonly string[]): Completions {
  const whole = typed.toLowerCase();
  const done = whole.lastIndexOf(' ') + 1;
  const next = names
    .filter((name) => name.startsWith(whole))
    .map((name) => `${name.slice(done).split(' ')[0] ?? ''} `);
  return [[...new Set(next)], typed.slice(done)];
}

/** What the options before the one being typed hold. */
function valuesBefore(text: string, used: readonly Marker[]): Readonly<Record<string, string>> {
  const before = used.slice(0, -1).map(({ option, valueStart }, at) => {
    const end = used[at + 1]?.start ?? text.length;
    return [option.name, text.slice(valueStart, end).trim()] as const;
  });
  return Object.fromEntries(before);
}

function completeOptions(text: string, command: Command, keep: Keep): Completions {
  const options = optionsOf(command.options);
  const used = markers(text, options);
  const last = used.at(-1);
  const value = text.slice(last?.valueStart ?? 0).trimStart();
  const word = /\S*$/.exec(value)?.[0] ?? '';
  const isFree = (name: string): boolean => !used.some(({ option }) => option.name === name);
  const names = options
    .filter(({ name }) => isFree(name) && name.startsWith(word.toLowerCase()))
    .map(({ name }) => `${name}:`);
  if (last === undefined) return [names, word];
  const longer = suggest(last.option, value, {
    keep,
    locale: localeInForce(),
    input: valuesBefore(text, used),
  }).filter((offer) => offer.toLowerCase() !== value.trim().toLowerCase());
  if (value === '') return [[...longer], ''];
  if (longer.length === 0) return [names, word];
  const head = value.slice(0, value.length - word.length);
  return [[...longer, ...names.map((name) => head + name)], value];
}
