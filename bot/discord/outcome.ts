import type { Answer } from '../../commands/answer.ts';
import type { Command, Context } from '../../commands/command.ts';
import { runFilled, withDefaults } from '../../commands/defaults.ts';
import type { Keep } from '../../commands/keep.ts';
import { Problem } from '../../core/problem.ts';
import { logFailure } from '../log.ts';
import type { Logger } from '../log.ts';
import { typedInput } from './call.ts';
import type { Call } from './call.ts';
import { helpAnswer } from './help.ts';
import { failureAnswer, problemAnswer } from './problem.ts';

/** What answering needs; everything comes from the composition root. */
export interface Desk {
  readonly commands: readonly Command[];
  readonly ask: (text: string, context: Context) => Answer;
  readonly log: Logger;
  readonly nowMs: () => number;
  /** What the person of this id keeps. */
  readonly keepFor: (personId: string) => Keep;
  /** Draws SVG as PNG. */
  readonly toPng: (svg: string) => Promise<Uint8Array>;
}

export interface Outcome {
  readonly answer: Answer;
  /** Only the asker sees it. */
  readonly hidden: boolean;
}

/** A call by the person of an id, with the values its options have. */
export interface Asked {
  readonly personId: string;
  readonly call: Call;
  readonly values: Readonly<Record<string, unknown>>;
}

const zone = 'UTC';

/** Runs a call. It never throws: a problem and a failure of ours are outcomes too, and hidden ones. */
export function run(desk: Desk, { personId, call, values }: Asked): Outcome {
  return attempt(desk, call, () => {
    const command = findByName(desk, call.command);
    if (command === undefined) {
      const hint = 'Type / to see the commands there are now.';
      throw new Problem('This command is no longer here.', { field: 'command', given: call.command, hint });
    }
    const keep = desk.keepFor(personId);
    const filled = withDefaults(command, values, keep);
    const answer = runFilled(command, filled, { nowMs: desk.nowMs(), zone, keep });
    return { answer, hidden: filled.hidden || answer.file !== undefined };
  });
}

/** Runs a call whose options are text, as a button holds them. */
export function runText(desk: Desk, personId: string, call: Call): Outcome {
  const command = findByName(desk, call.command);
  const values = command === undefined ? {} : typedInput(command, call.input);
  return run(desk, { personId, call, values });
}

/**
 * Answers a question in plain words; without words, says how to ask. `personId` only where nobody but that person reads
 * the answer: with it the answer may tell of their tank.
 */
export function runWords(desk: Desk, text: string, personId?: string): Outcome {
  return attempt(desk, undefined, () => {
    const keep = personId === undefined ? {} : { keep: desk.keepFor(personId) };
    const context = { nowMs: desk.nowMs(), zone, ...keep };
    return { answer: text === '' ? helpAnswer(desk.commands) : desk.ask(text, context), hidden: false };
  });
}

/** What `work` answers; or its problem, or its failure. */
function attempt(desk: Desk, call: Call | undefined, work: () => Outcome): Outcome {
  try {
    return work();
  } catch (error) {
    return { answer: errorAnswer(desk, error, call), hidden: true };
  }
}

/** A problem as an answer; any other error is logged and becomes its id. */
export function errorAnswer(desk: Desk, error: unknown, call?: Call): Answer {
  if (error instanceof Problem) return problemAnswer(error, call);
  return failureAnswer(logFailure(desk.log, error, 'an answer failed'));
}

export function findByName(desk: Desk, name: string): Command | undefined {
  return desk.commands.find((command) => command.path.join(' ') === name);
}
