import { z } from 'zod';
import { coralById } from '../../core/corals/coral-list.ts';
import { readSpot } from '../../core/corals/spot.ts';
import { Problem } from '../../core/problem.ts';
import { say } from '../../core/wording/say.ts';
import type { Answer } from '../answer.ts';
import { defineCommand } from '../command.ts';
import { textOption } from '../options.ts';
import { askedTank, keepOf } from '../tank/asked-tank.ts';
import { askedPlaced, nameOf, placedOption } from './asked-placed.ts';
import { askedWidth, widthOption } from './asked-width.ts';
import { placementAnswer } from './placement-answer.ts';
import { boxOf, sceneOf } from './scene-of.ts';
import { spotSaid } from './spot-said.ts';
import { tankInput, tankOption } from './tank-input.ts';

export const moveCoralCommand = defineCommand({
  path: ['coral', 'move'],
  summary: 'Say where a coral stands now, or how wide it is now, and check it there',
  example: '/coral move coral:torch at:30 cm from the left, 10 cm from the front, on the sand',
  private: true,
  options: z.strictObject({
    coral: placedOption(),
    at: textOption('Where now: "left, back, low", or 12 x 30 x 20 cm').optional(),
    size: widthOption().optional(),
    tank: tankOption(),
  }),
  run: (input, context): Answer => {
    const keep = keepOf(context);
    const tank = askedTank(keep, input.tank);
    const { id, ...before } = askedPlaced(keep, tank, input.coral);
    const entry = coralById(before.coralId);
    if (entry === undefined || (input.at === undefined && input.size === undefined)) {
      throw new Problem(say('coral.whereOrHowWide'), {
        field: 'at',
        hint: say('coral.hintMove', { id: String(id) }),
      });
    }
    const box = boxOf(keep, tank);
    const width = input.size === undefined ? undefined : askedWidth(input.size, entry);
    const kept = keep.changeCoral(tank.id, id, {
      ...before,
      ...(input.at === undefined ? {} : readSpot(input.at, box, 'at')),
      diameterCm: width?.diameterCm ?? before.diameterCm,
    });
    if (kept === undefined) throw new Problem(say('coral.noLongerKept'), { field: 'coral' });
    return placementAnswer(sceneOf(keep, tank, context.nowMs), id, {
      headline: say(input.at === undefined ? 'coral.isChanged' : 'coral.isMoved', {
        name: nameOf(kept),
        id: String(id),
        tank: tank.name,
      }),
      read: [`before: ${spotSaid(before, box)}`, ...(width === undefined ? [] : [width.read])],
      tankInput: tankInput(keep, tank),
    });
  },
});
