import { answer } from '../../../commands/answer.ts';
import type { Answer } from '../../../commands/answer.ts';
import type { Problem } from '../../../core/problem.ts';
import type { Call } from '../asked/call.ts';

/**
 * A problem as an answer: the option, what was given, what is accepted, and each choice as a next action, where `fields`
 * (the options of the called command) has the one it is about. A form can be filled in again.
 */
export function problemAnswer(problem: Problem, call?: Call, fields: readonly string[] = []): Answer {
  const { field, limit, hint, choices } = problem;
  const given = problem.given ?? call?.input[field];
  const canRun = call !== undefined && fields.includes(field);
  const facts = [
    { label: 'option', value: field },
    ...(given === undefined ? [] : [{ label: 'given', value: given }]),
    ...(limit === undefined ? [] : [{ label: 'accepted', value: limit }]),
  ];
  const next = canRun
    ? choices.map((choice) => ({
        label: choice,
        command: call.command,
        input: { ...call.input, [field]: choice },
      }))
    : [];
  const again = call?.ask === undefined ? [] : [{ label: 'Fill in again', ...call }];
  const asked = canRun || choices.length === 0 ? [] : [`Write one of these: ${choices.join('; ')}.`];
  return answer({
    headline: problem.message,
    facts,
    steps: [...(hint === undefined ? [] : [hint]), ...asked],
    next: [...next, ...again],
  });
}

/** What a member sees of a failure that is ours: nothing but the id that is in the log. */
export function failureAnswer(errorId: string): Answer {
  return answer({ headline: `That went wrong on our side. Nothing was worked out. Error ${errorId}.` });
}
