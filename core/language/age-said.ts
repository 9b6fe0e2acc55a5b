import { definitionOf } from '../quantity/unit.ts';
import type { Scanned } from './tokens.ts';

/** A tank is young below some four months; common practice, no source. */
const YOUNG_DAYS = 120;

/** "month old nano", "6 week old tank": an age said as such, of something young. */
export function isYoungSaid({ text }: Scanned): boolean {
  const { units } = definitionOf('days');
  return [...text.matchAll(/(?:(\d{1,3}) ?-?)?\b(days?|weeks?|months?)[ -]old\b/g)].some(
    ([, count = '1', name = '']) => {
      const unitDays = units.find(({ names }) => names.includes(name))?.factor ?? Infinity;
      return Number(count) * unitDays < YOUNG_DAYS;
    },
  );
}
