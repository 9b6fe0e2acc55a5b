import { Problem } from '../../core/problem.ts';
import type { RepeatContext } from '../../core/words/repeat-said.ts';
import { readRepeat, type Repeat } from '../../core/words/repeat.ts';
import { MOST_REMINDER_LETTERS } from '../reminder.ts';

/** Letters, digits and spaces as one reads them: no line breaks, no invisible characters. @throws Problem for no text. */
export function askedText(given: string, field: string): string {
  const text = given
    .replaceAll(/\p{Cf}/gu, '')
    .replaceAll(/[\p{Cc}\s]+/gu, ' ')
    .trim();
  if (/[\p{L}\p{N}]/u.test(text) && text.length <= MOST_REMINDER_LETTERS) return text;
  throw new Problem('A reminder needs a short text.', {
    field,
    given,
    limit: `1 to ${MOST_REMINDER_LETTERS} letters`,
    hint: 'Say what is to be done: change filter floss.',
  });
}

/** The option `when`: a time and nothing else. @throws Problem for what is left over. */
export function askedWhen(given: string, context: Omit<RepeatContext, 'field'>): Repeat {
  const repeat = readRepeat(given, { field: 'when', ...context });
  if (repeat.rest === '') return repeat;
  throw new Problem(`I could not read "${repeat.rest}" as a part of the time.`, {
    field: 'when',
    given,
    hint: 'Put only the time here, such as every other saturday 9am.',
  });
}

/** How often a repeat comes in all. @throws Problem for what comes once. */
export function askedTimes({ rule }: Repeat, times: number | undefined): number | undefined {
  if (times === undefined || (rule.every !== 'once' && rule.every !== 'after')) return times;
  throw new Problem('Only a repeat can have a number of times.', {
    field: 'times',
    given: String(times),
    hint: 'Leave it out, or say how often: every day 9am.',
  });
}
