import { z } from 'zod';
import { sayInstant } from '../../core/schedule/say.ts';
import { readWhen } from '../../core/words/when.ts';
import { answer, type Answer } from '../answer.ts';
import { defineCommand } from '../command.ts';
import { textOption } from '../options.ts';
import { keepOf } from '../tank/asked-tank.ts';
import { askedReminder, reminderOption } from './asked-reminder.ts';
import { done } from './moves.ts';
import { doneBefore, dueOption, moveTo, nextFacts, doneOccasion } from './occurrence.ts';

export const doneCommand = defineCommand({
  path: ['remind', 'done'],
  summary: 'Say that what a reminder is about is done',
  example: '/remind done reminder:floss',
  private: true,
  options: z.strictObject({
    reminder: reminderOption(),
    due: dueOption,
    at: textOption('When, if not now: 2 hours ago, yesterday 7pm').optional(),
  }),
  run: (input, { nowMs, ...context }): Answer => {
    const keep = keepOf({ nowMs, ...context });
    const { reminder, mine } = askedReminder(keep, input.reminder);
    const { zone, text } = reminder;
    const occasion = doneOccasion(reminder, input.due, nowMs);
    const before = doneBefore(reminder, occasion);
    if (before !== undefined) return before;
    const when = readWhen(input.at, { field: 'at', nowMs, zone });
    const { anchor, progress } = done(reminder, occasion.early, when.atMs, nowMs);
    const after = moveTo(keep, reminder, anchor, progress);
    const time = sayInstant(occasion.dueMs, zone);
    return answer({
      headline: `Done: ${text}.`,
      read: [
        occasion.early === undefined ? `counted for ${time}` : `done early, counted for ${time}`,
        ...(input.at === undefined
          ? []
          : [`done at ${sayInstant(when.atMs, zone)} (${zone})`, ...when.notes]),
        ...(mine ? [] : ['its owner sees that it is done, and when']),
      ],
      facts: nextFacts(after),
      instants: [occasion.dueMs, when.atMs].map((atMs) => ({ atMs, zone })),
    });
  },
});
