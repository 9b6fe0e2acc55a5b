import { z } from 'zod';
import { answer, type Answer } from '../answer.ts';
import { action } from '../calls.ts';
import { defineCommand } from '../command.ts';
import { textOption } from '../options.ts';
import { askedTank, keepOf } from './asked-tank.ts';
import { waterWords } from './print.ts';
import { say } from '../../core/wording/say.ts';

export const removeCommand = defineCommand({
  path: ['tank', 'remove'],
  summary: 'Remove a tank with everything logged for it; asks once more first',
  example: '/tank remove tank:Pantry',
  private: true,
  options: z.strictObject({
    tank: textOption('Which of your tanks', { suggest: 'tank' }),
    sure: z.enum(['yes']).describe('yes removes it at once').optional(),
  }),
  run: (input, context): Answer => {
    const keep = keepOf(context);
    const tank = askedTank(keep, input.tank);
    if (input.sure === undefined) {
      return answer({
        headline: `Remove ${tank.name} for good, with everything logged for it? Nothing is removed yet.`,
        read: [`${tank.name}: ${waterWords(tank)}`],
        steps: [`To remove it: /tank remove tank:${tank.name} sure:yes. To keep it, do nothing.`],
        dangers: ['It cannot be brought back.'],
        sources: ['practice'],
        next: [
          action(say('tank.yesRemove', { name: tank.name }), 'tank remove', { tank: tank.name, sure: 'yes' }),
        ],
      });
    }
    keep.removeTank(tank.id);
    const inUse = keep.tankInUse();
    const after = inUse === undefined ? 'No tank is in use now.' : `${inUse.name} is in use.`;
    return answer({
      headline: `${tank.name} is removed, with everything logged for it. ${after}`,
      sources: ['practice'],
      next: [action(say('tank.myTanks2'), 'tank list', {})],
    });
  },
});
