import { z } from 'zod';
import { urgentCard } from '../../core/care/urgent/cards.ts';
import { freshExcessFraction } from '../../core/change/salt.ts';
import { Problem } from '../../core/problem.ts';
import { fixed } from '../../core/quantity/format.ts';
import { urgentSide } from '../../core/water/limits.ts';
import { readSalinity } from '../../core/water/salinity-reading.ts';
import { answer, type Answer } from '../answer.ts';
import { action } from '../calls.ts';
import { defineCommand } from '../command.ts';
import { quantityOption, textOption } from '../options.ts';
import { readWater } from '../waterchange/pour.ts';
import { asRead, remarkOn } from './print.ts';
import { remarkFirst } from '../short/remark-first.ts';
import { say } from '../../core/wording/say.ts';

export const excessCommand = defineCommand({
  path: ['salinity', 'excess'],
  summary: 'Fresh water ran in by itself: how much too much it is, and whether to leave it',
  example: '/salinity excess now:1.024 usual:1.025 volume:75 gal',
  options: z.strictObject({
    now: textOption('What it reads now, e.g. 1.024'),
    usual: textOption('What it reads otherwise, e.g. 1.025'),
    volume: quantityOption('volume', 'Net water in the whole system', 'volume').optional(),
  }),
  run: (input): Answer => {
    const usual = readSalinity(input.usual, { field: 'usual' });
    const now = readSalinity(input.now, { field: 'now', pair: usual.pair });
    if (now.practicalSalinity >= usual.practicalSalinity) {
      throw new Problem(say('salinity.freshWaterExcessMakes'), {
        field: 'now',
        given: input.now,
        limit: say('salinity.below', { asRead: asRead(usual) }),
        hint: say('salinity.salinityRoseSalinityForecast'),
      });
    }
    const fraction = freshExcessFraction(usual.practicalSalinity, now.practicalSalinity);
    const share = fixed(fraction * 100, 1);
    const water = readWater(input.volume);
    const remark = remarkOn(now);
    const isUrgent = urgentSide('salinity', now.practicalSalinity) !== undefined;
    const much = `about ${share} % of the volume (${water.part(fraction)})`;
    const given = answer({
      tone: isUrgent ? 'urgent' : 'plain',
      headline: isUrgent
        ? `The extra water is fresh, ${much}: too much to wait.`
        : `Leave it. The extra water is fresh, ${much}; as it evaporates the salinity comes back.`,
      read: [
        `usually ${asRead(usual)}, now ${asRead(now)}, and no salt water was lost`,
        ...water.read,
        ...new Set([...usual.notes, ...now.notes.filter((note) => !note.startsWith('specific gravity on'))]),
      ],
      steps: [
        'Switch the automatic top-off off until the level is back at its usual mark.',
        'Measure again then; switch the top-off on when both level and salinity are right.',
        'Clean the overflow and see that the top-off has a second stop.',
      ],
      working: [`1 - ${fixed(now.practicalSalinity, 2)} / ${fixed(usual.practicalSalinity, 2)} = ${share} %`],
      dangers: ['Salt added now stays in when the extra water has gone, and the tank ends too salty.'],
      cautions: [
        'Only if tank water went onto the floor was salt lost: replace that part with salt water of the usual strength.',
      ],
      sources: ['mixing', 'fm83', 'practice'],
      next: isUrgent
        ? [
            action(urgentCard('salinity crash').label, 'urgent', { what: 'salinity crash' }),
            action(say('urgent.dayByDay'), 'salinity adjust', {
              now: input.now,
              goal: input.usual,
              volume: input.volume,
            }),
          ]
        : [],
    });
    return remarkFirst(remark, given);
  },
});
