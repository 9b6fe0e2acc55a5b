import { z } from 'zod';
import { mixRange } from '../../core/change/salt.ts';
import { inRange, Problem } from '../../core/problem.ts';
import { readQuantity } from '../../core/quantity/read.ts';
import { readSalinity } from '../../core/water/salinity-reading.ts';
import type { Answer } from '../answer.ts';
import { defineCommand } from '../command.ts';
import { quantityOption, textOption } from '../options.ts';
import { readWater } from '../waterchange/pour.ts';
import { understood } from './print.ts';
import { readEvaporation, readTopOff } from './evaporation.ts';
import { forecast } from './forecast-answer.ts';
import { say } from '../../core/wording/say.ts';

/** A year without a look at the salinity is no plan. */
const MOST_DAYS = 365;

export const forecastCommand = defineCommand({
  path: ['salinity', 'forecast'],
  summary: 'What salinity reads after days of evaporation, by what the water is topped off with',
  example: '/salinity forecast now:1.025 volume:75 gal evaporation:1 gal a day days:4 days top-off:none',
  options: z.strictObject({
    now: textOption('What it reads now, e.g. 1.025 or 35 ppt', { fill: 'salinity' }).optional(),
    volume: quantityOption('volume', 'Net water in the whole system', 'volume').optional(),
    evaporation: textOption('How much goes, e.g. 2 L a day, 1 % a day, 10 L'),
    days: quantityOption('days', 'For how long; 7 days if left out').optional(),
    'top-off': textOption('What replaces it: none, fresh, or its salinity, e.g. 35 ppt').optional(),
  }),
  run: (input): Answer => {
    if (input.now === undefined)
      throw new Problem(say('ask.tankReads'), { field: 'now', hint: say('salinity.exampleNow1025') });
    const now = readSalinity(input.now, { field: 'now' });
    inRange('now', now.practicalSalinity, mixRange.min, mixRange.max, 'ppt');
    const water = readWater(input.volume);
    const time = readQuantity('days', input.days ?? '7 days', { field: 'days', fallback: 'days' });
    const days = inRange('days', time.value, 1 / 24, MOST_DAYS, 'days');
    const gone = readEvaporation(input.evaporation, input.volume === undefined ? undefined : water, days);
    const topOff = readTopOff(input['top-off'] ?? 'none', now.pair);
    return forecast({
      now,
      water,
      days,
      aDay: gone.aDay,
      topOff,
      read: [
        ...understood('tank', now),
        ...gone.read,
        ...(input.days === undefined ? ['no time given, so 7 days'] : time.notes),
        ...topOff.read,
        ...water.read,
      ],
    });
  },
});
