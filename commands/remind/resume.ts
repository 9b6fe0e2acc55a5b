import { z } from 'zod';
import { answer, type Answer } from '../answer.ts';
import { action } from '../calls.ts';
import { defineCommand } from '../command.ts';
import type { Reminder } from '../reminder.ts';
import { keepOf } from '../tank/asked-tank.ts';
import { ownReminder, reminderOption } from './asked-reminder.ts';
import { stateWords, wakes } from './list.ts';
import { resumed } from './moves.ts';
import { named } from './times.ts';
import { wakeOf } from './wake.ts';
import { say } from '../../core/wording/say.ts';

/** So many are told one by one. */
const MOST_TOLD = 10;

export const resumeCommand = defineCommand({
  path: ['remind', 'resume'],
  summary: 'Go on with a paused or stopped reminder, or with all of them',
  example: '/remind resume',
  private: true,
  options: z.strictObject({ reminder: reminderOption().optional() }),
  run: (input, context): Answer => {
    const keep = keepOf(context);
    const { nowMs } = context;
    const which = input.reminder === undefined ? keep.reminders() : [ownReminder(keep, input.reminder)];
    const waiting = which.filter(({ pause, trouble }) => pause !== undefined || trouble !== undefined);
    if (waiting.length === 0) {
      return answer({
        headline: 'Nothing is paused or stopped.',
        next: [action(say('remind.myReminders'), 'remind list', {})],
      });
    }
    const after = waiting.map(
      (one): Reminder => keep.moveReminder(one.id, one.anchor, resumed(one, nowMs)) ?? one,
    );
    const atOnce = after.filter((one) => (wakeOf(one) ?? Infinity) <= nowMs);
    const [only] = after;
    const what =
      after.length === 1 && only !== undefined
        ? `Reminder ${named(only)} goes`
        : `${after.length} reminders go`;
    return answer({
      headline: `${what} on.`,
      read: atOnce.length === 0 ? [] : ['What was due once meanwhile comes at once.'],
      facts: after.slice(0, MOST_TOLD).map((one) => ({
        label: named(one),
        value: stateWords(one, nowMs),
        ...wakes(one),
      })),
      next: [action(say('remind.myReminders'), 'remind list', {})],
    });
  },
});
