import { actionOf } from '../../../commands/action-of.ts';
import { answer } from '../../../commands/answer.ts';
import type { Answer } from '../../../commands/answer.ts';
import type { Command } from '../../../commands/command.ts';
import type { Problem } from '../../../core/problem.ts';
import type { Call } from '../asked/call.ts';
import { say } from '../../../core/wording/say.ts';

/**
 * A problem as an answer: the option, what was given, what is accepted, and each choice as a next action, where the
 * called `command` has the one it is about. A form can be filled in again.
 */
export function problemAnswer(problem: Problem, call?: Call, command?: Command): Answer {
  const { field, limit, hint, choices } = problem;
  const given = problem.given ?? call?.input[field];
  const next = choices
    .map((choice) => ({ label: choice, input: { ...call?.input, [field]: choice } }))
    .map((one) => command && actionOf(command, one))
    .filter((one) => one !== undefined);
  const again = command && call?.ask && actionOf(command, { label: say('discord.fillInAgain'), ...call });
  const facts = [
    { label: say('discord.option'), value: field },
    ...(given === undefined ? [] : [{ label: say('discord.given'), value: given }]),
    ...(limit === undefined ? [] : [{ label: say('discord.accepted'), value: limit }]),
  ];
  const asked =
    next.length > 0 || choices.length === 0
      ? []
      : [say('discord.writeOneOf', { choices: choices.join('; ') })];
  return answer({
    headline: problem.message,
    facts,
    steps: [...(hint === undefined ? [] : [hint]), ...asked],
    next: again === undefined ? next : [...next, again],
  });
}

/** What a member sees of a failure that is ours: nothing but the id that is in the log. */
export function failureAnswer(errorId: string): Answer {
  return answer({ headline: say('discord.failed', { errorId }) });
}
