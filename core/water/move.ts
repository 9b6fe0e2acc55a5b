import { significant } from '../quantity/format.ts';
import { limitsOf } from './limits.ts';
import { parameter, type ParameterId } from './parameter.ts';

/** A move of a level in its own unit: `by` with its sign, `days` only where it is known how long it took. */
export interface Move {
  readonly id: ParameterId;
  readonly by: number;
  readonly days?: number | undefined;
  /** Between evening and morning, over and over: what it swings by in a day. */
  readonly isSwing?: boolean;
  /** It took weeks or months, whatever the days. */
  readonly isSlow?: boolean;
}

/** Without a time, a move is remarked on from so many days' worth of it; own choice. */
const MARKED = 1.5;
const EPSILON = 1e-9;

/** Whether it is the swing of one day and night: pH and temperature have one by themselves. */
export function isDailySwing({ id, days, isSwing = false }: Move): boolean {
  return usualSwing(id) !== undefined && (isSwing || (days !== undefined && days < 1));
}

/** The widest swing that is nothing to act on; undefined where there is none by itself. */
export function usualSwing(id: ParameterId): number | undefined {
  return limitsOf(id).swing;
}

/** Whether a swing is wider than usual. Check: pH 0.5 wide, 0.35 not; 2.6 °C wide. */
export function isWideSwing({ id, by }: Move): boolean {
  return Math.abs(by) > (usualSwing(id) ?? Infinity) + EPSILON;
}

/**
 * What is to be said of a move beside the range: faster than a level is moved in a day, or only harmless if it took long
 * enough; undefined where it is slow, or where nobody minds. Check: 8 to 10.5 dKH in 1 day is fast; in no said time it is
 * fast within 2.5 days; 8 to 8.6 is nothing.
 */
export function moveRemark(move: Move): string | undefined {
  const { id, by, days, isSlow = false } = move;
  const { pace } = limitsOf(id);
  const most = pace === undefined ? undefined : by > 0 ? pace.up : pace.down;
  const name = parameter(id).label;
  if (isDailySwing(move))
    return isWideSwing(move)
      ? `${name} swings by ${amount(id, by)} in a day, more than the usual ${amount(id, usualSwing(id) ?? 0)}`
      : undefined;
  const isNutrientUp = by > 0 && (id === 'nitrate' || id === 'phosphate');
  if (most === undefined || isSlow || isNutrientUp) return undefined;
  const time = move.isSwing === true ? 1 : days;
  const went = `${name} ${by > 0 ? 'rose' : 'fell'} by ${amount(id, by)}`;
  const limit = `the usual limit is ${amount(id, most)} a day`;
  if (time === undefined)
    return Math.abs(by) > MARKED * most + EPSILON
      ? `${went}, which is fast if it took less than ${significant(Math.abs(by) / most, 2)} days (${limit})`
      : undefined;
  return Math.abs(by) / time > most * 1.001
    ? `${went} in ${timeWords(time)}, which is fast (${limit})`
    : undefined;
}

/** "12 h", "a day", "2.5 days". */
export function timeWords(days: number): string {
  if (days < 1) return `${significant(days * 24, 2)} h`;
  return days === 1 ? 'a day' : `${significant(days, 3)} days`;
}

/** "2.5 dKH", "0.5". */
export function amount(id: ParameterId, by: number): string {
  return `${significant(Math.abs(by), 2)} ${parameter(id).unit}`.trim();
}
