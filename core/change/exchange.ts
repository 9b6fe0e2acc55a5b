import { inRange } from '../problem.ts';

/**
 * Water changes in batches, in a tank that is well mixed before each one. Levels are in any one unit that mixes in
 * proportion (mg/L, meq/L, practical salinity); `fraction` is the part of the water replaced, above 0 to 1.
 */
export interface Exchange {
  readonly now: number;
  /** Level of the new water. */
  readonly fresh: number;
  readonly fraction: number;
}

/** A level wanted, from where it is, with new water of level `fresh`. */
export interface Aim {
  readonly now: number;
  readonly goal: number;
  readonly fresh: number;
}

/** Smallest share that counts as a water change: 0.1 %. */
const leastPercent = 0.1;

/** @throws Problem unless `fraction` is 0.001 to `max` (1 where not given). */
export function checkedFraction(fraction: number, max = 1): number {
  inRange('share', Number((fraction * 100).toFixed(6)), leastPercent, max * 100, '%');
  return fraction;
}

/** @throws Problem unless `level` is finite, not negative and below a million. */
export function checkedLevel(field: string, level: number): number {
  return inRange(field, level, 0, 1e6, '');
}

/**
 * Level after `changes` equal changes: cs + (c0 - cs)(1 - f)^n. Source: mass balance [mixing].
 * `changes` 0 to 1e5. Check: 40, new water 0, three of 20 % -> 20.48; new water 5 -> 22.92. Doubt: dead corners, and
 * what rock, sand and animals give back between two changes, make the true fall smaller.
 *
 * @throws Problem outside the ranges.
 */
export function afterChanges(exchange: Exchange, changes = 1): number {
  const now = checkedLevel('now', exchange.now);
  const fresh = checkedLevel('fresh', exchange.fresh);
  const fraction = checkedFraction(exchange.fraction);
  return fresh + (now - fresh) * (1 - fraction) ** inRange('changes', changes, 0, 1e5, '');
}

/**
 * Share of the water one change must replace: (c0 - ct)/(c0 - cs), as a fraction 0 to 1. Source: mass balance [mixing].
 * Check: 40 to 10 with new water 0 -> 0.75; alkalinity 14 to 9 with mix 8 -> 0.8333; salinity 35 to 33 with fresh
 * water -> 0.05714 (by mass).
 *
 * @returns undefined when no change can do it: the goal is not between the level now and the new water's.
 */
export function fractionForGoal({ now, goal, fresh }: Aim): number | undefined {
  checkedLevel('now', now);
  checkedLevel('goal', goal);
  checkedLevel('fresh', fresh);
  if (now === goal) return 0;
  const fraction = (now - goal) / (now - fresh);
  return fraction > 0 && fraction <= 1 ? fraction : undefined;
}

/**
 * Share of each of `changes` equal changes that together reach the goal: 1 - ((ct - cs)/(c0 - cs))^(1/n). Source: mass
 * balance [mixing]. `changes` 1 to 100. Check: 80 to 10 by three, new water 0 -> 0.5.
 *
 * @returns undefined when no change can do it, or all the water would have to go.
 */
export function fractionForChanges(aim: Aim, changes: number): number | undefined {
  const alone = fractionForGoal(aim);
  if (alone === undefined || alone <= 0 || alone >= 1) return undefined;
  return 1 - (1 - alone) ** (1 / inRange('changes', changes, 1, 100, ''));
}

/** How many changes: the real number of the formula, and the whole number that gets there. */
export interface Changes {
  readonly exact: number;
  readonly whole: number;
}

/** Keeps a whole number reached up to rounding (ln 8 / ln 2 = 3) from being counted as one more. */
const slack = 1e-9;

/**
 * Changes of `fraction` until the level just after a change is at the goal, when the level also climbs by `rise`
 * between two changes (0: nothing is made). n = ln((ct - T)/(c0 - p - T))/ln(1 - f), T being the level the routine
 * settles at just after a change, cs + p(1 - f)/f; with p = 0 the familiar ln((ct - cs)/(c0 - cs))/ln(1 - f).
 * Source: mass balance [mixing]. `fraction` 0.001 to 0.99.
 * Check: 40 to 10 by 20 %, new water 0 -> 6.21257, so 7; 80 to 10 by 50 % -> 3.
 *
 * @returns undefined when it is never reached: the goal is beyond the new water, or the rise holds it off.
 */
export function changesToGoal(aim: Aim, fraction: number, rise = 0): Changes | undefined {
  const f = checkedFraction(fraction, 0.99);
  const p = checkedLevel('rise', rise);
  const { now, goal, fresh } = aim;
  const first = afterChanges({ now, fresh, fraction: f });
  const side = Math.sign(now - checkedLevel('goal', goal));
  if (side === 0) return { exact: 0, whole: 0 };
  const settled = fresh + (p * (1 - f)) / f;
  const exact = Math.log((goal - settled) / (now - p - settled)) / Math.log(1 - f);
  if (side * (first - goal) <= 0) return { exact: exact > 0 && exact < 1 ? exact : 1, whole: 1 };
  if (side * (goal - settled) <= 0 || side * (now - p - settled) <= 0) return undefined;
  return { exact, whole: Math.max(1, Math.ceil(exact - slack)) };
}
