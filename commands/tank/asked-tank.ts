import { Problem } from '../../core/problem.ts';
import { clean } from '../../core/quantity/clean.ts';
import type { OwnContext } from '../command.ts';
import type { Keep, Tank } from '../keep.ts';

/** What the asker keeps. @throws Problem where the bot does not know whose it would be. */
export function keepOf({ keep }: OwnContext): Keep {
  if (keep !== undefined) return keep;
  throw new Problem('I can keep a tank only where I know who is asking.', {
    field: 'tank',
    hint: 'Ask under your own name, in a server or a direct message, or in the terminal room.',
  });
}

/**
 * The member's tank of that name, in any case; the one in use where no name is given.
 *
 * @throws Problem with their tanks as choices, or with how to make one.
 */
export function askedTank(keep: Keep, name?: string): Tank {
  const tanks = keep.tanks();
  if (tanks.length === 0) {
    throw new Problem('You have no tank here yet.', {
      field: 'tank',
      given: name,
      hint: 'Make one with /tank new: a name and its volume or size.',
    });
  }
  const found = name === undefined ? keep.tankInUse() : tankNamed(keep, name);
  if (found !== undefined) return found;
  const message = name === undefined ? 'Which of your tanks?' : `You have no tank called ${name}.`;
  throw new Problem(message, { field: 'tank', given: name, choices: tanks.map((tank) => tank.name) });
}

/** The member's tank of that name, whatever its case and spacing. */
export function tankNamed(keep: Keep, name: string): Tank | undefined {
  const wanted = clean(name);
  return keep.tanks().find((tank) => clean(tank.name) === wanted);
}
