import type { Command } from '../../commands/command.ts';
import { MAX_MESSAGE_LENGTH } from '../../core/message-length.ts';
import { Problem } from '../../core/problem.ts';
import { say } from '../../core/wording/say.ts';
import { readName } from './name.ts';
import { readValues } from './values.ts';

/** What a typed line asks for. `number` picks from what the last reply offered. */
export type Line =
  | {
      readonly kind: 'command';
      readonly path: Command['path'];
      readonly input: Readonly<Record<string, unknown>>;
    }
  | { readonly kind: 'words'; readonly text: string }
  | { readonly kind: 'pick'; readonly number: number }
  | { readonly kind: 'help'; readonly topic?: string }
  | { readonly kind: 'quit' }
  /** The long form of the last answer; its next page. */
  | { readonly kind: 'why' }
  | { readonly kind: 'more' }
  | { readonly kind: 'empty' };

export type CommandLine = Extract<Line, { kind: 'command' }>;

/** Room for the name of a command and its other options beside a message, characters. */
const BESIDE = 200;
/** The longest line read, characters. */
export const LONGEST_LINE = MAX_MESSAGE_LENGTH + BESIDE;

/**
 * Reads one line: a command after a slash, a number picked, or plain words.
 *
 * @throws Problem for an unknown command or option, and for a line too long to read.
 */
export function readLine(typed: string, commands: readonly Command[]): Line {
  checkLength(typed);
  const line = typed.trim();
  if (line === '') return { kind: 'empty' };
  if (/^\d{1,3}$/.test(line)) return { kind: 'pick', number: Number(line) };
  if (/^\/?(quit|exit)$/i.test(line)) return { kind: 'quit' };
  const again = /^\/?(why|more)\??$/i.exec(line)?.[1]?.toLowerCase();
  if (again === 'why' || again === 'more') return { kind: again };
  const help = /^(?:\/\s*help(?:\s+(?!about:)(.*))?|help|\?)$/is.exec(line);
  if (help !== null) return help[1] === undefined ? { kind: 'help' } : { kind: 'help', topic: help[1] };
  if (!line.startsWith('/')) return { kind: 'words', text: line };
  const { command, rest } = readName(line, commands);
  return { kind: 'command', path: command.path, input: readValues(rest, command) };
}

/** @throws Problem for a line too long to read. */
export function checkLength(typed: string): void {
  if (typed.length <= LONGEST_LINE) return;
  throw new Problem(say('terminal.lineTooLong'), {
    field: 'line',
    given: say('terminal.characters', { count: typed.length }),
    limit: say('convert.atMostCharacters', { most: LONGEST_LINE }),
    hint: say('terminal.hintShorter'),
  });
}
