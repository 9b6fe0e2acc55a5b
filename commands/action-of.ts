import type { NextAction } from './answer.ts';
import type { Command } from './command.ts';
import { nameOf } from './named.ts';
import { optionsOf } from './options.ts';

/** Options as text, and those to be filled in first. */
interface Said {
  readonly label: string;
  readonly input: Readonly<Record<string, string>>;
  readonly ask?: readonly string[];
}

/** The action of a command that is known only when it runs; undefined where it has not all of these options. */
export function actionOf(command: Command, { label, input, ask = [] }: Said): NextAction | undefined {
  const names = new Set(optionsOf(command.options).map(({ name }) => name));
  if (![...Object.keys(input), ...ask].every((name) => names.has(name))) return undefined;
  return { label, command: nameOf(command), input, ...(ask.length === 0 ? {} : { ask }) } as NextAction;
}
