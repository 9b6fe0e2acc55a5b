import type { Command } from '../../commands/command.ts';
import { beginnings } from '../../commands/help/beginnings.ts';
import { optionWords } from '../../commands/help/option-words.ts';
import { subjects } from '../../commands/help/subjects.ts';
import { commandNamed, commandsUnder, nameOf } from '../../commands/named.ts';
import { isIdKind, optionsOf, type Option } from '../../commands/options.ts';
import { offeredHere, unknownCommand } from './name.ts';
import { plain } from './plain.ts';
import { page } from './render.ts';
import { table } from './table.ts';
import { list, section, strong, wrap, type Style } from './wrap.ts';

/**
 * The first help screen, or the page of one command, or the list under a first word.
 *
 * @throws Problem for a topic that is no command.
 */
export function helpPage(topic: string | undefined, commands: readonly Command[], style: Style): string {
  const name = (topic ?? '').replace(/^\//, '').trim().toLowerCase().replace(/\s+/g, ' ');
  if (name === '') return firstScreen(commands, style);
  const command = commandNamed(name, commands);
  if (command !== undefined) return commandPage(command, style);
  const under = commandsUnder(name, commands);
  if (under.length === 0) throw unknownCommand(topic ?? '', name.split(' ')[0] ?? '', commands);
  return page([...strong(wrap(`/${name}`, style.width), style), ...summaries(under, style)]);
}

function firstScreen(commands: readonly Command[], style: Style): string {
  const typing = [
    'Ask in plain words, or type a command: a slash, its name, then each option as name:value, in any order.',
    'A value runs to the next option name with a colon, so it may hold spaces. Write units with numbers: 75 gal, 8.3 dKH.',
    'Where a reply lists [1], [2], ..., type the number alone. Tab completes. /help and a word shows its commands, /help and a command its options.',
    'why shows the working and sources of the last answer, more its next page, done settles what was just due.',
    '/quit or Ctrl-D leaves.',
  ];
  return page([
    ...strong(wrap('How to type', style.width), style),
    ...list(typing, style),
    ...section('Examples', beginnings.map(toCopy), style),
    ...section('Commands', subjectLines(offeredHere(commands), style), style),
  ]);
}

/** One line a first word; /help and the word lists what is under it. */
function subjectLines(commands: readonly Command[], style: Style): string[] {
  const words = [...new Set(commands.map(({ path }) => path[0]))];
  return table(
    words.map((word) => [`/${word}`, subjects[word] ?? commandsUnder(word, commands)[0]?.summary ?? '']),
    style,
  );
}

function summaries(commands: readonly Command[], style: Style): string[] {
  return table(
    commands.map((command) => [`/${nameOf(command)}`, command.summary]),
    style,
  );
}

function commandPage(command: Command, style: Style): string {
  const options = optionsOf(command.options);
  const lines = options.flatMap((option) => [
    ...wrap(`${option.name}:${option.required ? ' (required)' : ''}`, style.width, '  '),
    ...wrap(details(option).join(' '), style.width, '      '),
  ]);
  return page([
    ...strong(wrap(`/${nameOf(command)}`, style.width), style),
    ...wrap(command.summary, style.width),
    ...section('Options', options.length === 0 ? ['  none'] : lines, style),
    ...section('Example', [toCopy(command.example)], style),
  ]);
}

function details(option: Option): readonly string[] {
  return [
    ...optionWords(option),
    ...(option.kind === 'file' ? ['The path of a file, from the folder the room was started in.'] : []),
    ...(isIdKind(option.kind) ? [`Its id on Discord, 17 to 20 digits.`] : []),
  ];
}

/** A line to copy is never broken. */
function toCopy(line: string): string {
  return `  ${plain(line)}`;
}
