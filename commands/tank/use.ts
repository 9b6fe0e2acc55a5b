import { z } from 'zod';
import { answer, type Answer } from '../answer.ts';
import { action } from '../calls.ts';
import { defineCommand } from '../command.ts';
import { textOption } from '../options.ts';
import { askedTank, keepOf } from './asked-tank.ts';
import { waterFacts } from './facts.ts';
import { waterWords } from './print.ts';
import { say } from '../../core/wording/say.ts';

export const useTankCommand = defineCommand({
  path: ['tank', 'use'],
  summary: 'Choose the tank I work with, when you name none',
  example: '/tank use tank:Pantry',
  private: true,
  options: z.strictObject({ tank: textOption('Which of your tanks', { suggest: 'tank' }) }),
  run: (input, context): Answer => {
    const keep = keepOf(context);
    const tank = askedTank(keep, input.tank);
    keep.useTank(tank.id);
    return answer({
      headline: `${tank.name} is now in use: ${waterWords(tank)}.`,
      facts: waterFacts(tank),
      steps: ['Where you leave out a volume, light hours or salinity, I take those of this tank and say so.'],
      sources: ['practice'],
      next: [action(say('tank.show', { name: tank.name }), 'tank show', { tank: tank.name })],
    });
  },
});
