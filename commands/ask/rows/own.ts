import type { z } from 'zod';
import type { SentenceKey } from '../../../core/wording/language.ts';
import { say } from '../../../core/wording/say.ts';
import { actionOf } from '../../action-of.ts';
import { answer, type Answer } from '../../answer.ts';
import { call, typed } from '../../called.ts';
import type { CommandOf, OptionsSchema, OwnContext } from '../../command.ts';

/**
 * Runs what touches the member's own records; where they must not be touched, because others read, says what will be done
 * and how, with the command as a button.
 */
export function own<S extends OptionsSchema>(
  what: SentenceKey,
  command: CommandOf<S>,
  found: z.input<S>,
  context: OwnContext,
): Answer {
  if (context.keep !== undefined) return call(command, found, context);
  const input = Object.fromEntries(
    Object.entries(found).flatMap(([name, value]) => (value === undefined ? [] : [[name, String(value)]])),
  );
  const label = say(what);
  const line = typed(command, found);
  return answer({
    headline: say('ask.pressTheButton', { what: label }),
    steps: [say('ask.orUse', { command: line })],
    next: [actionOf(command, { label, input })].filter((one) => one !== undefined),
  });
}
