import { z } from 'zod';
import { answer, type Answer } from '../answer.ts';
import { action } from '../calls.ts';
import { defineCommand } from '../command.ts';
import { textOption } from '../options.ts';
import { askedTank, keepOf } from './asked-tank.ts';
import { detailFacts, PRACTICE_TARGETS, targetReason, targetTable, waterFacts } from './facts.ts';
import { glassFacts } from './glass.ts';
import { waterWords } from './print.ts';
import { say } from '../../core/wording/say.ts';

export const showCommand = defineCommand({
  path: ['tank', 'show'],
  summary: 'What I keep of one of your tanks: water, habits and targets',
  example: '/tank show',
  private: true,
  options: z.strictObject({
    tank: textOption('Which of your tanks, if not the one in use', { suggest: 'tank' }).optional(),
  }),
  run: (input, context): Answer => {
    const keep = keepOf(context);
    const tank = askedTank(keep, input.tank);
    const inUse = keep.tankInUse()?.id === tank.id;
    return answer({
      headline: `${tank.name}: ${waterWords(tank)}.`,
      read: [
        inUse ? `${tank.name}, your tank in use` : `${tank.name}, not the tank in use`,
        targetReason(tank),
      ],
      facts: [
        ...waterFacts(tank),
        ...glassFacts(keep.glass(tank.id)),
        ...detailFacts(tank, context.nowMs),
        { label: 'how the water is known', value: tank.volumeBasis },
      ],
      table: targetTable(tank),
      cautions: [PRACTICE_TARGETS],
      sources: ['practice'],
      next: inUse ? [] : [action(say('tank.use', { name: tank.name }), 'tank use', { tank: tank.name })],
    });
  },
});
