import { answer } from '../../../commands/answer.ts';
import type { Answer } from '../../../commands/answer.ts';
import type { Command } from '../../../commands/command.ts';

/** What the bot says when it is mentioned without a question: one example of each kind of command. */
export function helpAnswer(commands: readonly Command[]): Answer {
  const offered = commands.filter(({ managers }) => !managers);
  const first = offered.filter(
    (command, at) => offered.findIndex((c) => c.path[0] === command.path[0]) === at,
  );
  return answer({
    headline: 'Ask about your tank in plain words, or type / and choose a command.',
    facts: first.map((command) => ({ label: command.path[0], value: command.example })),
  });
}
