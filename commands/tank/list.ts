import { z } from 'zod';
import { answer, type Answer } from '../answer.ts';
import { action } from '../calls.ts';
import { defineCommand } from '../command.ts';
import { MOST_TANKS } from '../keep.ts';
import { keepOf } from './asked-tank.ts';
import { kindWords, litres } from './print.ts';
import { say } from '../../core/wording/say.ts';

export const listCommand = defineCommand({
  path: ['tank', 'list'],
  summary: 'Your tanks, and which is in use',
  example: '/tank list',
  private: true,
  options: z.strictObject({}),
  run: (_input, context): Answer => {
    const keep = keepOf(context);
    const tanks = keep.tanks();
    const inUse = keep.tankInUse();
    if (tanks.length === 0) {
      return answer({
        headline: 'You have no tank here yet.',
        steps: ['Make one: /tank new with a name and its volume, or the size of the glass.'],
        sources: ['practice'],
      });
    }
    const count = tanks.length === 1 ? 'one tank' : `${tanks.length} tanks`;
    return answer({
      headline: `You have ${count} here; ${inUse === undefined ? 'none is' : `${inUse.name} is`} in use.`,
      read: [`your own tanks; at most ${MOST_TANKS}`],
      table: {
        head: ['tank', 'net water', 'display', 'kind', 'in use'],
        rows: tanks.map((tank) => [
          tank.name,
          litres(tank.netVolumeL, tank.units),
          tank.displayVolumeL === undefined ? 'not known' : litres(tank.displayVolumeL, tank.units),
          kindWords[tank.kind],
          tank.id === inUse?.id ? 'yes' : 'no',
        ]),
      },
      sources: ['practice'],
      next: tanks
        .filter(({ id }) => id !== inUse?.id)
        .slice(0, 3)
        .map(({ name }) => action(say('tank.use', { name }), 'tank use', { tank: name })),
    });
  },
});
