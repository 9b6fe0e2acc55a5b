import { z } from 'zod';
import { ruleText } from '../../core/schedule/say.ts';
import { answer, type Answer, type NextAction } from '../answer.ts';
import { action } from '../calls.ts';
import { defineCommand } from '../command.ts';
import type { Reminder } from '../reminder.ts';
import { keepOf } from '../tank/asked-tank.ts';
import { ownReminder, reminderOption } from './asked-reminder.ts';
import { lastReminder } from './meant.ts';
import { named, ruleWords } from './times.ts';
import { say } from '../../core/wording/say.ts';

export const removeReminderCommand = defineCommand({
  path: ['remind', 'remove'],
  summary: 'Remove a reminder; asks once more first',
  example: '/remind remove reminder:floss',
  private: true,
  options: z.strictObject({
    reminder: reminderOption().optional(),
    sure: z.enum(['yes']).describe('yes removes it at once').optional(),
  }),
  run: (input, context): Answer => {
    const keep = keepOf(context);
    const reminder =
      input.reminder === undefined ? lastReminder(keep, context) : ownReminder(keep, input.reminder);
    const list = action(say('remind.myReminders'), 'remind list', {});
    if (input.sure === undefined) {
      return answer({
        headline: `Remove reminder ${named(reminder)}? Nothing is removed yet.`,
        read: [ruleWords(reminder)],
        steps: ['To leave out one time only: /remind skip. To be left in peace for a while: /remind pause.'],
        next: [
          action(say('coral.yesRemove'), 'remind remove', { reminder: String(reminder.id), sure: 'yes' }),
          list,
        ],
      });
    }
    keep.removeReminder(reminder.id);
    return answer({
      headline: `Removed: ${reminder.text}.`,
      read: [`it was ${ruleWords(reminder)}`],
      next: [list, againAction(reminder)].filter((one) => one !== undefined),
    });
  },
});

/** Sets it anew as it was; none where its time was to come only once. */
function againAction({ text, rule, anchor, parameters }: Reminder): NextAction | undefined {
  if (rule.every === 'once' || rule.every === 'after') return undefined;
  const when = ruleText(rule, anchor);
  return parameters.length > 0
    ? action(say('remind.setAgain'), 'remind test', { of: parameters.join(', '), when })
    : action(say('remind.setAgain'), 'remind task', { text, when });
}
