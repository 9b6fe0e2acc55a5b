import { z } from 'zod';
import { answer, type Answer } from '../answer.ts';
import { action } from '../calls.ts';
import { defineCommand } from '../command.ts';
import { keepOf } from '../tank/asked-tank.ts';
import { ownReminder, reminderOption } from './asked-reminder.ts';
import { named, ruleWords } from './times.ts';

export const removeReminderCommand = defineCommand({
  path: ['remind', 'remove'],
  summary: 'Remove a reminder; asks once more first',
  example: '/remind remove reminder:floss',
  private: true,
  options: z.strictObject({
    reminder: reminderOption(),
    sure: z.enum(['yes']).describe('yes removes it at once').optional(),
  }),
  run: (input, context): Answer => {
    const keep = keepOf(context);
    const reminder = ownReminder(keep, input.reminder);
    const list = action('My reminders', 'remind list', {});
    if (input.sure === undefined) {
      return answer({
        headline: `Remove reminder ${named(reminder)}? Nothing is removed yet.`,
        read: [ruleWords(reminder)],
        steps: ['To leave out one time only: /remind skip. To be left in peace for a while: /remind pause.'],
        next: [
          action('Yes, remove it', 'remind remove', { reminder: String(reminder.id), sure: 'yes' }),
          list,
        ],
      });
    }
    keep.removeReminder(reminder.id);
    return answer({ headline: `Removed: ${reminder.text}.`, next: [list] });
  },
});
