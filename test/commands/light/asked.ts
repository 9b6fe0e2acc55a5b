import type { Answer } from '../../../commands/answer.ts';
import { lightCommands } from '../../../commands/light.ts';
import { runner } from '../text.ts';

export const ask = runner(lightCommands);

/** What a member is told to do: everything but what was read and how it adds up. */
export function adviceOf({ headline, steps, next }: Answer): string {
  return [
    headline,
    ...steps,
    ...next.map(({ label, input }) => `${label} ${Object.values(input).join(' ')}`),
  ].join('\n');
}

export const value = (given: Answer, label: string): string | undefined =>
  given.facts.find((fact) => fact.label === label)?.value;
export const verdict = (given: Answer, label: string): string | undefined =>
  given.facts.find((fact) => fact.label === label)?.verdict;
