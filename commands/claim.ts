import { z } from 'zod';
import { judge } from '../core/claims/judge.ts';
import { withoutTank } from '../core/claims/rule-text.ts';
import { MAX_MESSAGE_LENGTH } from '../core/message-length.ts';
import { hear } from '../core/words/hear.ts';
import { namesMedicine, refusalIntent } from './ask/refusal.ts';
import { claimAnswer } from './claim/claim-answer.ts';
import { notKnown } from './claim/not-known.ts';
import type { Answer } from './answer.ts';
import { defineCommand } from './command.ts';
import { askedWater } from './dose/asked.ts';
import { quantityOption, textOption } from './options.ts';

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
    const { rule, volume } = withoutTank(input.rule);
    const heard = hear(input.rule);
    const claim = namesMedicine(heard) ? undefined : judge(rule);
    if (claim !== undefined) return claimAnswer(claim, askedWater(volume ?? input.volume));
    return refusalIntent(heard, { ...context, keep: undefined }) ?? notKnown();
  },
});
