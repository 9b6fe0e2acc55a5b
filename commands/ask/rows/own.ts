import type { z } from 'zod';
import { actionOf } from '../../action-of.ts';
import { answer, type Answer } from '../../answer.ts';
import { call, typed } from '../../called.ts';
import type { CommandOf, OptionsSchema, OwnContext } from '../../command.ts';

/**
 * Runs what touches the member's own records; where they must not be touched, because others read, says what will be done
 * and how, with the command as a button.
 */
export function own<S extends OptionsSchema>(
  label: string,
  command: CommandOf<S>,
  found: z.input<S>,
  context: OwnContext,
): Answer {
  if (context.keep !== undefined) return call(command, found, context);
  const input = Object.fromEntries(
    Object.entries(found).flatMap(([name, value]) => (value === undefined ? [] : [[name, String(value)]])),
  );
  const line = typed(command, found);
  return answer({
    headline: `${label}? Press the button: here, where others read, nothing of yours is shown or changed.`,
    steps: [`Or use ${line}, or tell me in a direct message.`],
    next: [actionOf(command, { label, input })].filter((one) => one !== undefined),
  });
}
