import { inRange } from '../problem.ts';
import { checkedFraction, checkedLevel } from './exchange.ts';

/**
 * A water change at a fixed interval in a tank where the level climbs by `rise` between two changes. That the rise is
 * constant is a model: feeding, stock and season move it.
 */
export interface Routine {
  readonly fresh: number;
  readonly rise: number;
  readonly fraction: number;
}

/** A level just before and just after one change. */
export interface AtChange {
  readonly before: number;
  readonly after: number;
}

/**
 * Where the routine settles: just before a change cs + p/f, just after it cs + p(1 - f)/f. Source: mass balance
 * [mixing]. Check: +5 a week, 10 % weekly, new water 0 -> 50 and 45; +4, 15 % -> 26.67 and 22.67.
 *
 * @throws Problem outside the ranges.
 */
export function settles({ fresh, rise, fraction }: Routine): AtChange {
  const f = checkedFraction(fraction);
  const p = checkedLevel('rise', rise);
  const cs = checkedLevel('fresh', fresh);
  return { before: cs + p / f, after: cs + (p * (1 - f)) / f };
}

/**
 * What is made between two changes where the level just before a change stays at `before`: (before - cs) f, the reverse of
 * `settles`. Source: mass balance [mixing]. Check: 50, 10 %, new water 0 -> 5.
 *
 * @throws Problem outside the ranges.
 */
export function madeBetween({
  before,
  fresh,
  fraction,
}: Omit<Routine, 'rise'> & { readonly before: number }): number {
  return Math.max(0, checkedLevel('now', before) - checkedLevel('fresh', fresh)) * checkedFraction(fraction);
}

/** A share of exactly 1 may come out of the subtraction as a little more. */
const ROUNDING = 1e-9;

/**
 * Share that keeps the highest level, just before a change, at `peak`: p/(peak - cs). Source: mass balance [mixing].
 * Check: +4 a week, peak 10, new water 0 -> 0.4.
 *
 * @returns undefined when even changing all the water would not hold it.
 */
export function fractionToHold(peak: number, fresh: number, rise: number): number | undefined {
  const room = checkedLevel('goal', peak) - checkedLevel('fresh', fresh);
  const fraction = checkedLevel('rise', rise) / room;
  return room > 0 && fraction <= 1 + ROUNDING ? Math.min(1, fraction) : undefined;
}

/** The next `changes` changes (1 to 1000), beginning with one now; each following one finds the level `rise` higher. */
export function course(
  now: number,
  { fresh, rise, fraction }: Routine,
  changes: number,
): readonly AtChange[] {
  const f = checkedFraction(fraction);
  checkedLevel('fresh', fresh);
  checkedLevel('rise', rise);
  const list: AtChange[] = [];
  let before = checkedLevel('now', now);
  for (let change = 0; change < inRange('changes', changes, 1, 1000, ''); change += 1) {
    const after = fresh + (before - fresh) * (1 - f);
    list.push({ before, after });
    before = after + rise;
  }
  return list;
}

/**
 * Changes until 95 % of the way from any start to where the routine settles: ln 0.05/ln(1 - f), rounded up.
 * `fraction` 0.001 to 0.99. Check: 15 % -> 18.43, so 19.
 */
export function changesToSettle(fraction: number): number {
  return Math.ceil(Math.log(0.05) / Math.log(1 - checkedFraction(fraction, 0.99)));
}
