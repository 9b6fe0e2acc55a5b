import { z } from 'zod';
import { urgentIds, type UrgentId } from '../core/care/urgent/cards.ts';
import type { Answer } from './answer.ts';
import { PERSON_HURT } from '../core/care/hurt/question.ts';
import { clean } from '../core/quantity/clean.ts';
import { defineCommand, readerIn } from './command.ts';
import { firstAidFor } from './urgent/in-words.ts';
import { quantityOption, textOption } from './options.ts';
import { cardAnswer } from './urgent/card-answer.ts';
import { hurtAnswer, hurtChoices } from './urgent/hurt.ts';
import { overdosable } from './urgent/input.ts';
import { menuAnswer, menus, type MenuId } from './urgent/menu.ts';
import { takingAnything } from './urgent/taking-anything.ts';

const menuIds = Object.keys(menus) as readonly MenuId[];
/** What can be chosen; anything else is read as plain words. */
export const whats = [PERSON_HURT, ...urgentIds, ...menuIds] as const;

const strict = defineCommand({
  path: ['urgent'],
  summary: 'Something is going wrong now: what to do first, in order, with the numbers of your tank',
  example: '/urgent what:power cut volume:90 gal',
  options: z.strictObject({
    what: textOption('What is happening: choose, or say it in your own words', {
      suggest: 'emergency',
    }).optional(),
    hurt: z.enum(hurtChoices).describe('A person or pet is hurt: how').optional(),
    volume: quantityOption('volume', 'Net water in the whole system', 'volume').optional(),
    temperature: quantityOption('temperature', 'What the water reads now', 'temperature').optional(),
    salinity: textOption('What salinity reads now, e.g. 1.018 or 25 ppt', { fill: 'salinity' }).optional(),
    of: z.enum(overdosable).describe('What was dosed too much; alkalinity if left out').optional(),
    now: textOption('What ammonia or the overdosed one reads now, e.g. 14 dKH or 1 ppm').optional(),
    goal: textOption('Where it usually is, e.g. 9 dKH or 35 ppt').optional(),
    fresh: textOption('What the new salt water reads of it').optional(),
  }),
  run: ({ what, hurt, ...input }, context): Answer => {
    if (hurt !== undefined || what === PERSON_HURT) return hurtAnswer(hurt);
    if (what === undefined) return menuAnswer(undefined);
    const named = [...urgentIds, ...menuIds].find((name) => name === clean(what));
    if (named === undefined) return firstAidFor(readerIn(context).read(what), input);
    return isMenu(named) ? menuAnswer(named) : cardAnswer(named, input);
  },
});

function isMenu(what: UrgentId | MenuId): what is MenuId {
  return what in menus;
}

/** First aid is answered whatever was typed beside it: what the schema does not take is left out and named. */
export const urgentCommand = takingAnything(strict);
