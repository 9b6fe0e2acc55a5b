import type { Answer } from '../../commands/answer.ts';
import type { Command } from '../../commands/command.ts';
import { Problem } from '../../core/problem.ts';

/** Everything an answer says, one line a part. */
export function textOf(given: Answer): string {
  const { headline, echo = '', read, unused, facts, steps, working, dangers, cautions, next } = given;
  return [
    headline,
    echo,
    ...read,
    ...unused.map((text) => `not used: ${text}`),
    ...facts.map(({ label, value, verdict }) => `${label}: ${value} ${verdict ?? ''}`),
    ...steps,
    ...working,
    ...dangers,
    ...cautions,
    ...next.map(({ label }) => label),
  ].join('\n');
}

/** Runs one of the commands by the last word of its path. */
export function runner(commands: readonly Command[]) {
  return (name: string, input: Record<string, string>): Answer => {
    const command = commands.find(({ path }) => path.at(-1) === name);
    if (command === undefined) throw new Error(`no command ${name}`);
    return command.run(input, { nowMs: 0 });
  };
}

/** The Problem that `run` throws; anything else fails the test. */
export function problemOf(run: () => unknown): Problem {
  try {
    run();
  } catch (error) {
    if (error instanceof Problem) return error;
    throw error;
  }
  throw new Error('no Problem was thrown');
}
