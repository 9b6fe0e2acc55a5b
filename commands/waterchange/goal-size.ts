import { fractionForChanges, type Aim } from '../../core/change/exchange.ts';
import { Problem } from '../../core/problem.ts';
import { say } from '../../core/wording/say.ts';

/** How large each of so many changes must be. @throws Problem where that many was not said, or cannot do it. */
export function sizeOf(aim: Aim, times: number | undefined): number {
  if (times === undefined)
    throw new Problem(say('change.howMuchWaterDo'), {
      field: 'share',
      hint: say('change.exampleShare20'),
    });
  const found = fractionForChanges(aim, times);
  if (found !== undefined) return found;
  throw new Problem(say('change.noChangesWithWater'), {
    field: 'goal',
    limit: say('change.betweenReadingNowLevel'),
  });
}
