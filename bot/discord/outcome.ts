import type { Answer } from '../../commands/answer.ts';
import type { Command, Context } from '../../commands/command.ts';
import { Problem } from '../../core/problem.ts';
import { logFailure } from '../log.ts';
import type { Logger } from '../log.ts';
import { typedInput } from './call.ts';
import type { Call } from './call.ts';
import { helpAnswer } from './help.ts';
import { failureAnswer, problemAnswer } from './problem.ts';
import { render } from './render.ts';
import type { Rendered } from './render.ts';

/** What answering needs; everything comes from the composition root. */
export interface Desk {
  readonly commands: readonly Command[];
  readonly ask: (text: string, context: Context) => Answer;
  readonly log: Logger;
  readonly nowMs: () => number;
}

export interface Outcome {
  readonly rendered: Rendered;
  /** Only the asker sees it. */
  readonly hidden: boolean;
}

/** Runs a call. It never throws: a problem and a failure of ours are outcomes too, and hidden ones. */
export function run(desk: Desk, call: Call, values: Readonly<Record<string, unknown>>): Outcome {
  const command = findByName(desk, call.command);
  return attempt(desk, call, command?.private ?? true, () => {
    if (command === undefined) {
      const hint = 'Type / to see the commands there are now.';
      throw new Problem('This command is no longer here.', { field: 'command', given: call.command, hint });
    }
    return command.run(values, { nowMs: desk.nowMs() });
  });
}

/** Runs a call whose options are text, as a button holds them. */
export function runText(desk: Desk, call: Call): Outcome {
  const command = findByName(desk, call.command);
  return run(desk, call, command === undefined ? {} : typedInput(command, call.input));
}

/** Answers a question in plain words; without words, says how to ask. */
export function runWords(desk: Desk, text: string): Outcome {
  return attempt(desk, undefined, false, () =>
    text === '' ? helpAnswer(desk.commands) : desk.ask(text, { nowMs: desk.nowMs() }),
  );
}

export function findByName(desk: Desk, name: string): Command | undefined {
  return desk.commands.find((command) => command.path.join(' ') === name);
}

function attempt(desk: Desk, call: Call | undefined, hidden: boolean, work: () => Answer): Outcome {
  try {
    return { rendered: render(work()), hidden };
  } catch (error) {
    if (error instanceof Problem) return { rendered: render(problemAnswer(error, call)), hidden: true };
    const errorId = logFailure(desk.log, error, 'an answer failed');
    return { rendered: render(failureAnswer(errorId)), hidden: true };
  }
}
