import { Problem } from '../../core/problem.ts';
import { clean } from '../../core/quantity/clean.ts';
import type { OwnContext } from '../command.ts';
import type { Keep, Tank } from '../keep.ts';
import { say } from '../../core/wording/say.ts';

/** What the asker keeps. @throws Problem where the bot does not know whose it would be. */
export function keepOf({ keep }: OwnContext): Keep {
  if (keep !== undefined) return keep;
  throw new Problem(say('tank.iCanKeepTank'), {
    field: 'tank',
    hint: say('tank.askUnderYourOwn'),
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
    throw new Problem(say('tank.youHaveNoTank'), {
      field: 'tank',
      given: name,
      hint: say('tank.makeOneWithTank'),
    });
  }
  const found = name === undefined ? keep.tankInUse() : tankNamed(keep, name);
  if (found !== undefined) return found;
  const message = name === undefined ? say('tank.whichOfYours') : say('tank.noneCalled', { name });
  throw new Problem(message, { field: 'tank', given: name, choices: tanks.map((tank) => tank.name) });
}

/** The member's tank of that name, whatever its case and spacing. */
export function tankNamed(keep: Keep, name: string): Tank | undefined {
  const wanted = clean(name);
  return keep.tanks().find((tank) => clean(tank.name) === wanted);
}
