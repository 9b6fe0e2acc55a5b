import { fractionForChanges, type Aim } from '../../core/change/exchange.ts';
import { Problem } from '../../core/problem.ts';

/** How large each of so many changes must be. @throws Problem where that many was not said, or cannot do it. */
export function sizeOf(aim: Aim, times: number | undefined): number {
  if (times === undefined)
    throw new Problem('How much water do you change each time?', {
      field: 'share',
      hint: 'For example share 20 %.',
    });
  const found = fractionForChanges(aim, times);
  if (found !== undefined) return found;
  throw new Problem('No changes with this water get there.', {
    field: 'goal',
    limit: 'between the reading now and the level of the new water',
  });
}
