import { z } from 'zod';
import { answer, type Answer } from '../answer.ts';
import { defineCommand } from '../command.ts';
import { textOption } from '../options.ts';
import { askedTank, keepOf } from './asked-tank.ts';
import { ageFact, PRACTICE_TARGETS, targetTable, waterFacts } from './facts.ts';
import { kindWords, waterWords } from './print.ts';

/** The one command about a member's tank whose answer everyone sees: no readings, no habits, no basis. */
export const shareCommand = defineCommand({
  path: ['tank', 'share'],
  summary: 'Show everyone a card of your tank, without its readings',
  example: '/tank share',
  sharing: true,
  options: z.strictObject({
    tank: textOption('Which of your tanks, if not the one in use', { suggest: 'tank' }).optional(),
  }),
  run: (input, context): Answer => {
    const tank = askedTank(keepOf(context), input.tank);
    const { name, kind, startedOn } = tank;
    return answer({
      headline: `${name}, ${kindWords[kind]}: ${waterWords(tank)}.`,
      facts: [
        { label: 'kind', value: kindWords[kind] },
        ...waterFacts(tank),
        ...(startedOn === undefined ? [] : [ageFact(startedOn, context.nowMs)]),
      ],
      table: targetTable(tank),
      cautions: [PRACTICE_TARGETS],
      sources: ['practice'],
    });
  },
});
