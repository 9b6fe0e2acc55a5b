import type { z } from 'zod';
import { Problem } from '../core/problem.ts';
import { asRead } from '../core/quantity/marks.ts';
import { actionOf } from './action-of.ts';
import { answer, type Answer } from './answer.ts';
import type { Asking, CommandOf, OptionsSchema } from './command.ts';
import { answerOf, givenOf } from './defaults.ts';
import { nameOf } from './named.ts';

/**
 * Runs the command a sentence asks for, with the options found in it; those that were not said are undefined. The answer
 * begins with what was understood, as the command that would ask the same. A value that can mean two things becomes one
 * question whose choices run the command anew.
 *
 * @throws Problem where the command does and has nothing to choose from.
 */
export function call<S extends OptionsSchema>(
  command: CommandOf<S>,
  found: z.input<S>,
  asking: Asking,
): Answer {
  try {
    const result = answerOf(command, found, asking);
    return { ...result, echo: typed(command, found) };
  } catch (error) {
    if (!(error instanceof Problem) || error.choices.length === 0) throw error;
    const only = onlyReading(error);
    if (only === undefined) return question(error, command, found);
    const done = call(command, { ...found, [error.field]: only }, asking);
    return { ...done, read: [...done.read, `read ${String(error.given)} as ${only}`] };
  }
}

/** A number that can only be one thing: "52" of a probe is 52 mS/cm. */
function onlyReading({ choices: [only, more], given = '' }: Problem): string | undefined {
  return more === undefined && given !== '' && only?.startsWith(`${given.trim()} `) === true
    ? only
    : undefined;
}

/** The command line that asks the same. */
export function typed<S extends OptionsSchema>(command: CommandOf<S>, input: z.input<S>): string {
  const options = Object.entries(texts(input)).map(([key, value]) => `${key}:${asRead(value)}`);
  return [`/${nameOf(command)}`, ...options].join(' ');
}

function question<S extends OptionsSchema>(
  problem: Problem,
  command: CommandOf<S>,
  found: z.input<S>,
): Answer {
  return answer({
    headline: problem.message,
    tone: 'question',
    echo: typed(command, found),
    next: problem.choices
      .map((choice) =>
        actionOf(command, { label: choice, input: { ...texts(found), [problem.field]: choice } }),
      )
      .filter((one) => one !== undefined),
  });
}

/** Options as a button holds them. */
function texts(input: object): Readonly<Record<string, string>> {
  return Object.fromEntries(Object.entries(givenOf(input)).map(([name, value]) => [name, String(value)]));
}
