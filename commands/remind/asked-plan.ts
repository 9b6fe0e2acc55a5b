import { Problem } from '../../core/problem.ts';
import type { RepeatContext } from '../../core/words/repeat-said.ts';
import { readRepeat, type Repeat } from '../../core/words/repeat.ts';
import { MOST_REMINDER_LETTERS } from '../reminder.ts';
import { say } from '../../core/wording/say.ts';

/** Letters, digits and spaces as one reads them: no line breaks, no invisible characters. @throws Problem for no text. */
export function askedText(given: string, field: string): string {
  const text = given
    .replaceAll(/\p{Cf}/gu, '')
    .replaceAll(/[\p{Cc}\s]+/gu, ' ')
    .trim();
  if (/[\p{L}\p{N}]/u.test(text) && text.length <= MOST_REMINDER_LETTERS) return text;
  throw new Problem(say('remind.reminderNeedsShortText'), {
    field,
    given,
    limit: say('remind.limitLetters', { MOSTREMINDERLETTERS: MOST_REMINDER_LETTERS }),
    hint: say('remind.sayWhatBeDone'),
  });
}

/** The option `when`: a time and nothing else. @throws Problem for what is left over. */
export function askedWhen(given: string, context: Omit<RepeatContext, 'field'>): Repeat {
  const repeat = readRepeat(given, { field: 'when', ...context });
  if (repeat.rest === '') return repeat;
  throw new Problem(say('remind.iCouldNotRead', { rest: repeat.rest }), {
    field: 'when',
    given,
    hint: say('remind.putOnlyTimeHere'),
  });
}

/** How often a repeat comes in all. @throws Problem for what comes once. */
export function askedTimes({ rule }: Repeat, times: number | undefined): number | undefined {
  if (times === undefined || (rule.every !== 'once' && rule.every !== 'after')) return times;
  throw new Problem(say('remind.onlyRepeatCanHave'), {
    field: 'times',
    given: String(times),
    hint: say('remind.leaveOutOrSay'),
  });
}
