import type { Frame } from '../../../core/language/frame.ts';
import { timesIn } from '../../../core/language/times-said.ts';
import type { Answer } from '../../answer.ts';
import type { OwnContext } from '../../command.ts';
import { sumCommand } from '../../waterchange/sum.ts';
import { call } from '../../called.ts';

/** More changes than so many are a routine, not a sum. Own choice. */
export const MOST_TIMES = 100;

/** "three 10 % changes", "four of 20 % against one of 80 %": shares, and no reading that they should move. */
export function isSum(frame: Frame): boolean {
  const { levels = [], shares = [] } = frame.slots;
  if (levels.some(({ of }) => of !== 'temperature')) return false;
  return isCounted(frame) || new Set(shares).size > 1;
}

/** Several changes of one share, and how many of them. */
export function isCounted({ slots: { levels = [], shares = [], counts = [], everyDays } }: Frame): boolean {
  const isAlone = levels.every(({ of }) => of === 'temperature') && shares.length > 0;
  return isAlone && countOf(counts) !== undefined && (everyDays === undefined || shares.length > 1);
}

/** What several changes replace together, and the one they are compared with. */
export function summed(
  { slots: { shares = [], counts = [], volume } }: Frame,
  context: OwnContext,
): Answer | undefined {
  const times = countOf(counts);
  // Without a number of them the small ones are counted that make up the large one.
  const [share, single] =
    times === undefined ? shares.toSorted((a, b) => Number.parseFloat(a) - Number.parseFloat(b)) : shares;
  if (share === undefined) return undefined;
  return call(sumCommand, { share, times, single, volume }, context);
}

/** How many changes of one size. */
export function timesSaid({ reading: { scanned, said } }: Frame): number | undefined {
  return timesIn(scanned, said);
}

function countOf(counts: readonly number[]): number | undefined {
  return counts.find((count) => Number.isInteger(count) && count > 1 && count <= MOST_TIMES);
}
