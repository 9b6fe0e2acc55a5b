import { isSum } from '../../core/language/kind-groups.ts';
import type { Kind } from '../../core/language/kinds.ts';
import type { SlotName, Slots } from '../../core/language/slots.ts';
import { rowOf } from './kinds.ts';

/** What is told for the sake of a sum, and of nothing else: levels, volumes and names are told beside all things. */
const OF_SUMS: readonly SlotName[] = ['amount', 'strength', 'share', 'changed', 'waterRate', 'rate', 'span'];
/** What it counts that a sum takes in all of them; own choice. */
const ALL = 0.6;
/** One fact alone speaks of many sums, and amounts and times of none. Own choices. */
const LEAST = 2;
const MAIN: ReadonlySet<SlotName> = new Set(['share', 'changed', 'waterRate', 'rate']);

/**
 * How plainly the facts of a case speak of a sum that takes in all of them: "90 l, 1.5 l goes away each day, at 35, away
 * 7 days" is a forecast of salinity, whatever words ask for it.
 */
export function coverOf(slots: Slots): (kind: Kind) => number {
  const told = OF_SUMS.filter((name) => slots[name] !== undefined);
  const isPlain = told.length >= LEAST && told.some((name) => MAIN.has(name));
  return (kind) => {
    const row = isPlain && isSum(kind) ? rowOf(kind) : undefined;
    return row !== undefined && told.every((name) => row.uses.includes(name)) ? ALL : 0;
  };
}
