import { Problem } from '../../core/problem.ts';
import { answer, type Answer } from '../answer.ts';
import type { Command, OwnContext } from '../command.ts';
import { convertCommand } from '../convert.ts';
import { coralCommands } from '../coral.ts';
import { runWithDefaults } from '../defaults.ts';
import { doseCommands } from '../dose.ts';
import { lightCommands } from '../light.ts';
import { salinityCommands } from '../salinity.ts';
import { waterchangeCommands } from '../waterchange.ts';

const callable: readonly Command[] = [
  ...doseCommands,
  ...waterchangeCommands,
  ...salinityCommands,
  ...lightCommands,
  ...coralCommands,
  convertCommand,
];

/** Options found in a sentence; those that were not said are undefined. */
export type FoundInput = Readonly<Record<string, string | undefined>>;

/**
 * Runs the command a sentence asks for. The answer begins with what was understood, as the command that would ask
 * the same. A value that can mean two things becomes one question whose choices run the command anew.
 *
 * @throws Problem where the command does and has nothing to choose from.
 */
export function call(name: string, found: FoundInput, context: OwnContext): Answer {
  const command = callable.find(({ path }) => path.join(' ') === name);
  if (command === undefined) throw new Error(`no command ${name}`);
  const input = Object.fromEntries(
    Object.entries(found).flatMap(([key, value]) => (value === undefined ? [] : [[key, value]])),
  );
  try {
    const result = runWithDefaults(command, input, context);
    return { ...result, read: [`your question as ${typed(name, input)}`, ...result.read] };
  } catch (error) {
    if (error instanceof Problem && error.choices.length > 0) return question(error, name, input);
    throw error;
  }
}

/** The command line that asks the same. */
export function typed(name: string, input: Readonly<Record<string, string>>): string {
  return [`/${name}`, ...Object.entries(input).map(([key, value]) => `${key}:${value}`)].join(' ');
}

function question(problem: Problem, name: string, input: Readonly<Record<string, string>>): Answer {
  return answer({
    headline: problem.message,
    read: [`your question as ${typed(name, input)}`],
    next: problem.choices.map((choice) => ({
      label: choice,
      command: name,
      input: { ...input, [problem.field]: choice },
    })),
  });
}
