import type { Answer } from '../../../commands/answer.ts';

/** Everything an answer says, one line a part. */
export function textOf(answer: Answer): string {
  return [
    answer.headline,
    ...answer.read,
    ...answer.facts.map(({ label, value, verdict }) => `${label}: ${value} ${verdict ?? ''}`),
    ...answer.steps,
    ...answer.working,
    ...answer.cautions,
    ...answer.next.map(({ label }) => label),
  ].join('\n');
}
