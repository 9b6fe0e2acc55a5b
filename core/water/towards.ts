import { limitsOf, sideOf, type Range, type Side } from './limits.ts';
import type { ParameterId } from './parameter.ts';

/** A level that something is to be brought to, outside where it is usually kept; all in the parameter's own unit. */
export interface Unusual {
  readonly side: Side;
  readonly usual: Range;
  /** It lies on the same side as now but nearer to the usual range: the way is right, and not yet at its end. */
  readonly isNearer: boolean;
  /** The end of the usual range next to it: where to aim instead. */
  readonly instead: number;
}

/**
 * The one guard before any dose, change or salt plan: whether `goal` lies outside the usual range of the table
 * (limits.ts) by more than the instrument can be off. Undefined inside it.
 *
 * Check: alkalinity 8 to 12 dKH -> high; 4 to 6 dKH -> low and nearer; salinity to 32.5 ppt -> undefined (error 1).
 */
export function unusualGoal(id: ParameterId, goal: number, now?: number): Unusual | undefined {
  const { usual, error = 0 } = limitsOf(id);
  const [low, high] = usual;
  const side = sideOf(goal, [low - error, high + error]);
  if (side === undefined) return undefined;
  const isNearer =
    now !== undefined && sideOf(now, usual) === side && (side === 'low' ? goal > now : goal < now);
  return { side, usual, isNearer, instead: side === 'low' ? low : high };
}
