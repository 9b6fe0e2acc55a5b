import type { Answer } from '../../../commands/answer.ts';
import { lightCommands } from '../../../commands/light.ts';
import { Problem } from '../../../core/problem.ts';

export function ask(name: string, input: Record<string, string>): Answer {
  const command = lightCommands.find(({ path }) => path[1] === name);
  if (command === undefined) throw new Error(`no command ${name}`);
  return command.run(input, { nowMs: 0 });
}

export function textOf(given: Answer): string {
  const facts = given.facts.map(({ label, value, verdict }) => `${label}: ${value} (${verdict ?? ''})`);
  return [given.headline, ...given.read, ...facts, ...given.steps, ...given.working, ...given.cautions].join(
    '\n',
  );
}

/** What a member is told to do: everything but what was read and how it adds up. */
export function adviceOf({ headline, steps, next }: Answer): string {
  return [
    headline,
    ...steps,
    ...next.map(({ label, input }) => `${label} ${Object.values(input).join(' ')}`),
  ].join('\n');
}

export function problemOf(run: () => unknown): Problem {
  try {
    run();
  } catch (error) {
    if (error instanceof Problem) return error;
    throw error;
  }
  throw new Error('no Problem was thrown');
}

export const value = (given: Answer, label: string): string | undefined =>
  given.facts.find((fact) => fact.label === label)?.value;
export const verdict = (given: Answer, label: string): string | undefined =>
  given.facts.find((fact) => fact.label === label)?.verdict;
