import { doseCommands } from '../../../commands/dose.ts';
import type { Answer } from '../../../commands/answer.ts';
import { Problem } from '../../../core/problem.ts';

type Input = Readonly<Record<string, string>>;

/** Runs `/dose name` with options as a member types them. */
export function dose(name: string, input: Input): Answer {
  const command = doseCommands.find(({ path }) => path[1] === name);
  if (command === undefined) throw new Error(`no /dose ${name}`);
  return command.run(input, { nowMs: 0 });
}

/** Every word of the answer a member sees, one part a line. */
export function words(answer: Answer): string {
  const facts = answer.facts.map(({ label, value }) => `${label}: ${value}`);
  return [
    answer.headline,
    ...answer.read,
    ...facts,
    ...answer.steps,
    ...answer.working,
    ...answer.cautions,
  ].join('\n');
}

/** The value of a fact by its label. */
export function fact(answer: Answer, label: string): string | undefined {
  return answer.facts.find((found) => found.label === label)?.value;
}

/** The Problem a call ends in. */
export function problem(name: string, input: Input): Problem {
  try {
    dose(name, input);
  } catch (error) {
    if (error instanceof Problem) return error;
    throw error;
  }
  throw new Error('answered where a Problem was due');
}
