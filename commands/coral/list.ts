import { z } from 'zod';
import { check } from '../../core/corals/check.ts';
import { roughWords } from '../../core/corals/spot-words.ts';
import { cm } from '../../core/corals/say.ts';
import { say } from '../../core/wording/say.ts';
import { answer, type Answer } from '../answer.ts';
import { action } from '../calls.ts';
import { defineCommand } from '../command.ts';
import { MOST_CORALS } from '../placed.ts';
import { askedTank, keepOf } from '../tank/asked-tank.ts';
import { nameOf } from './asked-placed.ts';
import { worstOf } from './finding-words.ts';
import { sceneOf } from './scene-of.ts';
import { guessedCautions, spotShort } from './spot-said.ts';
import { tankInput, tankOption } from './tank-input.ts';

export const listCoralsCommand = defineCommand({
  path: ['coral', 'list'],
  summary: 'The corals of your tank: where they stand, how wide, with a verdict each',
  example: '/coral list',
  private: true,
  options: z.strictObject({ tank: tankOption() }),
  run: (input, context): Answer => {
    const keep = keepOf(context);
    const tank = askedTank(keep, input.tank);
    const corals = keep.corals(tank.id);
    if (corals.length === 0) {
      return answer({
        headline: say('coral.noneYet', { tank: tank.name }),
        steps: [say('coral.placeOne')],
      });
    }
    const scene = sceneOf(keep, tank, context.nowMs);
    const findings = check(scene);
    return answer({
      headline: say('coral.hasSoMany', { tank: tank.name, count: corals.length }),
      read: [`at most ${MOST_CORALS} a tank`],
      table: {
        head: [
          say('coral.headNumber'),
          say('coral.headCoral'),
          say('coral.headWhere'),
          say('coral.headWide'),
          say('coral.headGrew'),
          say('coral.headSince'),
          say('coral.headVerdict'),
        ],
        rows: corals.map((one) => [
          String(one.id),
          nameOf(one),
          one.rough ? roughWords(one.spot, scene.box) : spotShort(one.spot),
          cm(one.diameterCm),
          one.origin,
          one.since ?? say('coral.notSaid'),
          scene.corals.some(({ id }) => id === one.id) ? worstOf(one.id, findings) : say('coral.notInGuide'),
        ]),
      },
      cautions: guessedCautions(scene),
      sources: ['practice', 'memory'],
      next: [
        action(say('coral.checkThemAll'), 'coral check', tankInput(keep, tank)),
        action(say('coral.mapOfTank'), 'coral map', tankInput(keep, tank)),
      ],
    });
  },
});
