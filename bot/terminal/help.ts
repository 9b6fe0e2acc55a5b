import type { Command } from '../../commands/command.ts';
import { beginnings } from '../../commands/help/beginnings.ts';
import { optionWords } from '../../commands/help/option-words.ts';
import { subjects } from '../../commands/help/subjects.ts';
import { commandNamed, commandsUnder, nameOf } from '../../commands/named.ts';
import { isIdKind, optionsOf, type Option } from '../../commands/options.ts';
import { say } from '../../core/wording/say.ts';
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
    say('terminal.typeWords'),
    say('terminal.typeValues'),
    say('terminal.typeNumbers'),
    say('terminal.typeAgain'),
    say('terminal.typeQuit'),
  ];
  return page([
    ...strong(wrap(say('terminal.helpTyping'), style.width), style),
    ...list(typing, style),
    ...section(say('terminal.helpExamples'), beginnings.map(toCopy), style),
    ...section(say('terminal.helpCommands'), subjectLines(offeredHere(commands), style), style),
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
    ...wrap(
      option.required ? say('help.required', { option: `${option.name}:` }) : `${option.name}:`,
      style.width,
      '  ',
    ),
    ...wrap(details(option).join(' '), style.width, '      '),
  ]);
  return page([
    ...strong(wrap(`/${nameOf(command)}`, style.width), style),
    ...wrap(command.summary, style.width),
    ...section(
      say('terminal.helpOptions'),
      options.length === 0 ? [`  ${say('terminal.helpNone')}`] : lines,
      style,
    ),
    ...section(say('terminal.helpExample'), [toCopy(command.example)], style),
  ]);
}

function details(option: Option): readonly string[] {
  return [
    ...optionWords(option),
    ...(option.kind === 'file' ? [say('terminal.filePath')] : []),
    ...(isIdKind(option.kind) ? [say('terminal.discordId')] : []),
  ];
}

/** A line to copy is never broken. */
function toCopy(line: string): string {
  return `  ${plain(line)}`;
}
