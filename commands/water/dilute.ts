import { z } from 'zod';
import { scan } from '../../core/language/tokens.ts';
import { namesMedicine } from '../triage/refused.ts';
import type { Answer } from '../answer.ts';
import { defineCommand } from '../command.ts';
import { quantityOption, textOption } from '../options.ts';
import { cardAnswer } from '../urgent/card-answer.ts';
import { overdosable } from '../urgent/input.ts';
import { takingAnything } from '../urgent/taking-anything.ts';
import { foreign } from './foreign.ts';
import { overdosedWith } from './overdosed.ts';

const strict = defineCommand({
  path: ['water', 'dilute'],
  summary: 'Something went in by mistake: first aid, how much is in the water, what changes take out',
  example: '/water dilute what:baking soda amount:3 tbsp volume:60 gal',
  options: z.strictObject({
    what: textOption('What went in, e.g. soda ash, vinegar', { suggest: 'compound' }).optional(),
    amount: textOption('How much, e.g. 30 g, 3 tbsp, 50 mL').optional(),
    strength: textOption('Of a liquid, e.g. 80 g/L or 5 %').optional(),
    volume: quantityOption('volume', 'Net water in the whole system', 'volume').optional(),
    of: z.enum(overdosable).describe('What it raises, where you know that').optional(),
    now: textOption('What that reads now, e.g. 14 dKH').optional(),
    share: quantityOption('share', 'A water change you think of, e.g. 30 %').optional(),
    goal: textOption('What you want it down to, e.g. 1 mg/L').optional(),
  }),
  run: (input, context): Answer =>
    namesMedicine(scan(input.what ?? ''))
      ? cardAnswer('copper or medicine', { volume: input.volume })
      : (overdosedWith(input, context) ?? foreign(input)),
});

/** First aid is answered whatever was typed beside it. */
export const diluteCommand = takingAnything(strict);
