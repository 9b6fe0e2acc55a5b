import { z } from 'zod';
import { say } from '../../core/wording/say.ts';
import { answer, type Answer } from '../answer.ts';
import { action } from '../calls.ts';
import { defineCommand } from '../command.ts';
import { askedTank, keepOf } from '../tank/asked-tank.ts';
import { askedPlaced, numbered, placedOption } from './asked-placed.ts';
import { boxOf } from './scene-of.ts';
import { spotSaid } from './spot-said.ts';
import { tankInput, tankOption } from './tank-input.ts';

export const removeCoralCommand = defineCommand({
  path: ['coral', 'remove'],
  summary: 'Take a coral off the map of your tank; asks once more first',
  example: '/coral remove coral:torch',
  private: true,
  options: z.strictObject({
    coral: placedOption(),
    tank: tankOption(),
    sure: z.enum(['yes']).describe('yes removes it at once').optional(),
  }),
  run: (input, context): Answer => {
    const keep = keepOf(context);
    const tank = askedTank(keep, input.tank);
    const placing = askedPlaced(keep, tank, input.coral);
    const list = action(say('coral.myCorals'), 'coral list', tankInput(keep, tank));
    if (input.sure === undefined) {
      return answer({
        headline: say('coral.removeIt', { coral: numbered(placing), tank: tank.name }),
        read: [spotSaid(placing, boxOf(keep, tank))],
        next: [
          action(say('coral.yesRemove'), 'coral remove', {
            coral: String(placing.id),
            ...tankInput(keep, tank),
            sure: 'yes',
          }),
          list,
        ],
      });
    }
    keep.removeCoral(tank.id, placing.id);
    return answer({
      headline: say('coral.removed', { coral: numbered(placing), tank: tank.name }),
      next: [list],
    });
  },
});
