import type { Answer } from '../../../commands/answer.ts';
import { doseCommands } from '../../../commands/dose.ts';
import type { Problem } from '../../../core/problem.ts';
import { problemOf, runner, textOf } from '../text.ts';

/** Runs `/dose name` with options as a member types them. */
export const dose = runner(doseCommands);

/** Every word of the answer a member sees, one part a line. */
export const words = textOf;

/** The value of a fact by its label. */
export function fact(answer: Answer, label: string): string | undefined {
  return answer.facts.find((found) => found.label === label)?.value;
}

/** The Problem a call ends in. */
export function problem(name: string, input: Record<string, string>): Problem {
  return problemOf(() => dose(name, input));
}
