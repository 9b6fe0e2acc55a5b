import { z } from 'zod';
import { sayInstant } from '../../core/schedule/say.ts';
import { answer, type Answer } from '../answer.ts';
import { defineCommand } from '../command.ts';
import { keepOf } from '../tank/asked-tank.ts';
import { askedReminder, reminderOption } from './asked-reminder.ts';
import { skipped } from './moves.ts';
import { doneBefore, dueOption, moveTo, nextFacts, occasionOf } from './occurrence.ts';

export const skipCommand = defineCommand({
  path: ['remind', 'skip'],
  summary: 'Leave one time of a reminder out; the next comes as ever',
  example: '/remind skip reminder:floss',
  private: true,
  options: z.strictObject({ reminder: reminderOption(), due: dueOption }),
  run: (input, context): Answer => {
    const keep = keepOf(context);
    const { nowMs } = context;
    const { reminder } = askedReminder(keep, input.reminder);
    const occasion = occasionOf(reminder, input.due, nowMs);
    const before = doneBefore(reminder, occasion);
    if (before !== undefined) return before;
    const { anchor, progress } = skipped(reminder, occasion.early, nowMs);
    const after = moveTo(keep, reminder, anchor, progress);
    return answer({
      headline: `Left out: ${reminder.text}, ${sayInstant(occasion.dueMs, reminder.zone)}.`,
      facts: nextFacts(after),
      instants: [{ atMs: occasion.dueMs, zone: reminder.zone }],
    });
  },
});
