import { z } from 'zod';
import type { Answer } from '../answer.ts';
import { defineCommand } from '../command.ts';
import { textOption } from '../options.ts';
import { comparedSalinity, instrumentNames } from './compared.ts';

export const compareSalinityCommand = defineCommand({
  path: ['salinity', 'compare'],
  summary: 'Two instruments on one water: whether they agree, and how to find the right one',
  example: '/salinity compare first:1.026 second:1.023 by:refractometer other:swing arm',
  options: z.strictObject({
    first: textOption('What one shows, e.g. 1.026 or 53 mS/cm'),
    second: textOption('What the other shows, e.g. 1.023'),
    by: z.enum(instrumentNames).describe('What the first was read with').optional(),
    other: z.enum(instrumentNames).describe('What the second was read with').optional(),
  }),
  run: ({ first, second, by, other }): Answer =>
    comparedSalinity({ text: first, by }, { text: second, by: other }),
});
