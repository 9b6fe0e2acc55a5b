import { z } from 'zod';
import { ruleWithin } from '../core/claims/judge.ts';
import { state } from '../core/claims/stated.ts';
import { framesOf } from '../core/language/frame.ts';
import { MAX_MESSAGE_LENGTH } from '../core/message-length.ts';
import { scan } from '../core/language/tokens.ts';
import { claimAnswer } from './claim/claim-answer.ts';
import { notKnown } from './claim/not-known.ts';
import type { Answer } from './answer.ts';
import { defineCommand, readerIn } from './command.ts';
import { askedWater } from './dose/asked.ts';
import { quantityOption, textOption } from './options.ts';
import { particularOf } from './primer/particular.ts';
import { medicineAnswer, namesBleach, namesMedicine } from './triage/refused.ts';

export const claimCommand = defineCommand({
  path: ['claim'],
  summary: 'Is a rule you were told right? The verdict, the right figure, and what it would do to your tank',
  example: '/claim rule:1 tsp baking soda per 5 gal raises 1 dKH volume:75 gal',
  options: z.strictObject({
    rule: textOption('The rule as you heard it, e.g. 4 x 20 % = 80 %', { max: MAX_MESSAGE_LENGTH }),
    volume: quantityOption(
      'volume',
      'Net water of your system, to see what the rule would do there',
      'volume',
    ).optional(),
  }),
  run: (input, context): Answer => {
    const scanned = scan(input.rule);
    if (namesMedicine(scanned) || namesBleach(scanned))
      return medicineAnswer(readerIn(context).read(input.rule), { ...context, keep: undefined });
    const claim = ruleWithin(scanned)?.claim;
    if (claim !== undefined) return claimAnswer(claim, askedWater(state(scanned).tank ?? input.volume));
    const frame = framesOf(readerIn(context).read(input.rule)).find(({ kind }) => kind === 'claim');
    return (frame && particularOf(frame)) ?? notKnown();
  },
});
