import type { Command } from './command.ts';
import { optionsOf } from './options.ts';

/** The options a command asks for before it runs, of those that an input leaves out. */
export function askedFirst(command: Command, input: Readonly<Record<string, unknown>>): readonly string[] {
  return optionsOf(command.options)
    .filter(({ name, isAsked }) => isAsked === true && input[name] === undefined)
    .map(({ name }) => name);
}
