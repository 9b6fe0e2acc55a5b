import type { Command } from '../../commands/command.ts';
import { Problem } from '../../core/problem.ts';
import { commandNamed, commandsUnder, nameOf } from '../../commands/named.ts';
import { nearest } from '../../commands/nearest.ts';
import { say } from '../../core/wording/say.ts';

/** What the room itself answers to, beside the commands. */
export const roomWords = ['help', 'quit'] as const;

/** Commands for the managers of a server are known, but not offered: there is no server here. */
export function offeredHere(commands: readonly Command[]): readonly Command[] {
  return commands.filter(({ managers }) => !managers);
}

/**
 * The command a line begins with, and the text after its name.
 *
 * @throws Problem naming the nearest command, or the second words a first one takes.
 */
export function readName(line: string, commands: readonly Command[]): { command: Command; rest: string } {
  const [written = '', first = '', second = ''] = /^\/\s*(\S*)(?:\s+(\S+))?/.exec(line) ?? [];
  const one = first.toLowerCase();
  const two = second.toLowerCase();
  const double = two === '' ? undefined : commandNamed(`${one} ${two}`, commands);
  if (double !== undefined) return { command: double, rest: line.slice(written.length) };
  const short = /^\/\s*\S*/.exec(line)?.[0] ?? '';
  const single = commandNamed(one, commands);
  if (single !== undefined) return { command: single, rest: line.slice(short.length) };
  const under = commandsUnder(one, commands);
  if (under.length === 0) throw unknownCommand(short, one, commands);
  throw two === '' || two.includes(':')
    ? secondWordMissing(short, under)
    : secondWordUnknown(written, two, under);
}

/** "There is no such command", with the nearest one as the hint. */
export function unknownCommand(given: string, word: string, commands: readonly Command[]): Problem {
  const near = nearest(word, [...new Set([...commands.map(({ path }) => path[0]), ...roomWords])]);
  return new Problem(say('help.noSuchCommand'), {
    field: 'command',
    given,
    hint:
      near === undefined
        ? say('terminal.hintHelpList')
        : say('terminal.didYouMeanOrHelp', { command: `/${near}` }),
    choices: near === undefined ? [] : [`/${near}`],
  });
}

function secondWordMissing(given: string, under: readonly Command[]): Problem {
  return new Problem(say('terminal.needsSecondWord', { command: given }), {
    field: 'command',
    given,
    limit: secondWords(under).join(', '),
    choices: under.map((command) => `/${nameOf(command)}`),
  });
}

function secondWordUnknown(given: string, word: string, under: readonly Command[]): Problem {
  const [group = ''] = under.map(({ path }) => path[0]);
  const near = nearest(word, secondWords(under));
  return new Problem(say('help.noSuchCommand'), {
    field: 'command',
    given,
    limit: say('terminal.limitSecondWords', { command: `/${group}`, words: secondWords(under).join(', ') }),
    hint: near === undefined ? undefined : say('terminal.didYouMean', { name: `/${group} ${near}` }),
    choices: near === undefined ? [] : [`/${group} ${near}`],
  });
}

function secondWords(under: readonly Command[]): readonly string[] {
  return under.flatMap(({ path }) => path.slice(1));
}
