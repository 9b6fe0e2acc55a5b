import { z } from 'zod';
import { inRange } from '../../core/problem.ts';
import { fixed, significant } from '../../core/quantity/format.ts';
import { readQuantity } from '../../core/quantity/read.ts';
import { afterContinuous } from '../../core/change/continuous.ts';
import { mixRange } from '../../core/change/salt.ts';
import { readSalinity } from '../../core/water/salinity-reading.ts';
import { salinityOff } from '../../core/water/salinity-remark.ts';
import { answer, type Answer } from '../answer.ts';
import { defineCommand } from '../command.ts';
import { quantityOption, textOption } from '../options.ts';
import { readEvaporation } from './evaporation.ts';
import { both, ppt, understood } from './print.ts';
import { opened } from '../short/remark-first.ts';
import { readWater } from '../waterchange/pour.ts';

export const lostCommand = defineCommand({
  path: ['salinity', 'lost'],
  summary:
    'What salinity reads when tank water goes out, as skimmate or spills, and fresh water takes its place',
  example: '/salinity lost now:35 ppt volume:75 gal out:1 L a day days:30 days',
  options: z.strictObject({
    now: textOption('What it reads now, e.g. 1.025 or 35 ppt', { fill: 'salinity' }),
    volume: quantityOption('volume', 'Net water in the whole system', 'volume').optional(),
    out: textOption('How much salt water goes out, e.g. 1 L a day, 10 L'),
    days: quantityOption('days', 'For how long; 7 days if left out').optional(),
  }),
  run: (input): Answer => {
    const now = readSalinity(input.now, { field: 'now' });
    const s = inRange('now', now.practicalSalinity, mixRange.min, mixRange.max, 'ppt');
    const water = readWater(input.volume);
    const days = readQuantity('days', input.days ?? '7 days', { field: 'days', fallback: 'days' });
    const out = readEvaporation(input.out, input.volume === undefined ? undefined : water, days.value);
    const gone = out.aDay * days.value;
    const then = afterContinuous(s, 0, gone);
    const remark = salinityOff(then);
    const given = answer({
      headline: '',
      read: [
        ...understood('tank', now),
        ...out.read.map((line) => line.replace('evaporates', 'goes out as salt water')),
        ...(input.days === undefined ? ['no time given, so 7 days'] : days.notes),
        ...water.read,
      ],
      facts: [
        { label: 'fall a day', value: `about ${significant(s - afterContinuous(s, 0, out.aDay), 2)} ppt` },
      ],
      steps: [
        'Put back as much salt water of the usual strength as goes out as skimmate.',
        'Replace only what evaporates with fresh (RO) water.',
        'Set the skimmer drier, and read salinity once a week with an instrument checked on a 35 ppt standard.',
      ],
      working: [`${fixed(s, 1)} x e^(-${significant(gone, 3)}) = ${fixed(then, 2)} ppt`],
      cautions: ['Tank water takes its salt along, and fresh water brings none back.'],
      sources: ['mixing', 'practice'],
    });
    const main = `After ${significant(days.value)} days it reads about ${both(then, now.pair)}, down from ${ppt(s)}.`;
    return opened(
      [{ value: main }, remark === undefined ? undefined : { label: 'then', value: remark }],
      given,
    );
  },
});
