import type { Command } from './command.ts';

/** A command's name as it is typed after the slash. */
export function nameOf(command: Pick<Command, 'path'>): string {
  return command.path.join(' ');
}

export function commandNamed(name: string, commands: readonly Command[]): Command | undefined {
  return commands.find((command) => nameOf(command) === name);
}

/** The commands under a first word, the word itself included. */
export function commandsUnder(word: string, commands: readonly Command[]): readonly Command[] {
  return commands.filter(({ path }) => path[0] === word);
}
