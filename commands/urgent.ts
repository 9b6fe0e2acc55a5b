import { z } from 'zod';
import { urgentIds, type UrgentId } from '../core/care/urgent/cards.ts';
import type { Answer } from './answer.ts';
import { defineCommand } from './command.ts';
import { quantityOption, textOption } from './options.ts';
import { cardAnswer } from './urgent/card-answer.ts';
import { menuAnswer, SOMETHING_GOT_IN, somethingGotIn } from './urgent/menu.ts';

const whats = [...urgentIds, SOMETHING_GOT_IN] as const satisfies readonly (
  UrgentId | typeof SOMETHING_GOT_IN
)[];

export const urgentCommand = defineCommand({
  path: ['urgent'],
  summary: 'Something is going wrong now: what to do first, in order, with the numbers of your tank',
  example: '/urgent what:power cut volume:90 gal',
  options: z.strictObject({
    what: z.enum(whats).describe('What is happening').optional(),
    volume: quantityOption('volume', 'Net water in the whole system', 'volume').optional(),
    temperature: quantityOption('temperature', 'What the water reads now', 'temperature').optional(),
    salinity: textOption('What salinity reads now, e.g. 1.018 or 25 ppt', { fill: 'salinity' }).optional(),
    of: z
      .enum(['alkalinity', 'limewater', 'calcium'])
      .describe('What was dosed too much; alkalinity if left out')
      .optional(),
    now: textOption('What ammonia or the overdosed one reads now, e.g. 14 dKH or 1 ppm').optional(),
    goal: textOption('Where it usually is, e.g. 9 dKH or 35 ppt').optional(),
    fresh: textOption('What the new salt water reads of it').optional(),
  }),
  run: ({ what, ...input }): Answer => {
    if (what === undefined) return menuAnswer();
    return what === SOMETHING_GOT_IN ? somethingGotIn() : cardAnswer(what, input);
  },
});
