import type { Said } from './said.ts';
import type { Scanned } from './tokens.ts';

/** Words behind a number that make it so many changes. Grammar: nothing is learnt of them. */
const CHANGES = new Set('change changes wc wcs swap swaps times goes rounds more row'.split(' '));
/** Words behind a number in which it is said of what there are so many. Own choice. */
const NEAR = 4;
/** More changes than these are a routine. Own choice. */
const MOST = 100;

/**
 * How many changes: a whole number with "times", with "changes" near behind it, or before a share, "4 of 20 %". Corals and
 * other things that are counted are none.
 */
export function timesIn({ tokens }: Scanned, said: readonly Said[]): number | undefined {
  return said.find(({ part, of, number }) => {
    const isCount = part === 'none' && of !== 'coral' && of !== 'fish' && Number.isInteger(number.value);
    if (!isCount || number.value < 2 || number.value > MOST) return false;
    if (number.kinds.includes('times')) return true;
    const behind = tokens.filter(({ start }) => start >= number.end).slice(0, NEAR);
    return (
      number.kinds.length === 0 &&
      behind.some(({ word, number: next }) => CHANGES.has(word) || next?.kinds.includes('share') === true)
    );
  })?.number.value;
}
