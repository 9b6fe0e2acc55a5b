import { z } from 'zod';
import type { Answer } from '../answer.ts';
import { defineCommand } from '../command.ts';
import { textOption } from '../options.ts';
import { MOST_REMINDER_LETTERS } from '../reminder.ts';
import { zoneOption } from '../zone.ts';
import { askedPlace, placeOptions } from './asked-place.ts';
import { askedText, askedTimes, askedWhen } from './asked-plan.ts';
import { inSaidZone } from './said-zone.ts';
import { setReminder, tankOf } from './set.ts';

export const whenOption = textOption('When: every other saturday 9am, every 31st, in 3 days, every 12 hours');
export const tankOption = textOption('For which of your tanks, if not the one in use', {
  suggest: 'tank',
}).optional();

export const taskCommand = defineCommand({
  path: ['remind', 'task'],
  summary: 'Remind me of a task at a time, once or again and again',
  example: '/remind task text:change filter floss when:every saturday 9am',
  private: true,
  options: z.strictObject({
    text: textOption('What is to be done, e.g. change filter floss', { max: MOST_REMINDER_LETTERS }),
    when: whenOption,
    tank: tankOption,
    zone: zoneOption(),
    ...placeOptions,
    times: z.int().min(1).max(366).describe('How many times in all, where it ends').optional(),
  }),
  run: (input, context): Answer => {
    const tank = tankOf(context, input.tank);
    const text = askedText(input.text, 'text');
    const place = askedPlace(input, context);
    const { text: when, zone, ...asked } = inSaidZone(input.when, input.zone, context, tank);
    const repeat = askedWhen(when, { nowMs: context.nowMs, zone });
    const times = askedTimes(repeat, input.times);
    return setReminder({ text, parameters: [], tank, zone, repeat, times, place }, context, asked);
  },
});
