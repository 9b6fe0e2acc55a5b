import { isSum } from '../../core/language/kind-groups.ts';
import type { Kind } from '../../core/language/kinds.ts';
import type { SlotName, Slots } from '../../core/language/slots.ts';
import { rowOf } from './kinds.ts';

/** What is told for the sake of a sum, and of nothing else: levels, volumes and names are told beside all things. */
const OF_SUMS: readonly SlotName[] = ['amount', 'strength', 'share', 'changed', 'waterRate', 'rate', 'span'];
/** Of one that takes in all of them; own choice. */
const ALL = 0.6;
/** One fact alone speaks of many sums, and an amount or a time of none. Own choices. */
const LEAST = 2;
const MAIN: ReadonlySet<SlotName> = new Set(['share', 'changed', 'waterRate', 'rate']);

/**
 * How plainly the facts of a case speak of a sum, 0 to 0.6: the more of them it takes in, where it lacks nothing. "90 l, 1.5 l
 * goes away each day, at 35, away 7 days" is a forecast of salinity, whatever words ask for it.
 */
export function coverOf(slots: Slots): (kind: Kind) => number {
  const told = OF_SUMS.filter((name) => slots[name] !== undefined);
  return (kind) => {
    const row = isSum(kind) ? rowOf(kind) : undefined;
    if (row === undefined || told.length < LEAST || !told.some((name) => MAIN.has(name))) return 0;
    const used = told.filter((name) => row.uses.includes(name));
    return used.length < told.length ? 0 : ALL;
  };
}
