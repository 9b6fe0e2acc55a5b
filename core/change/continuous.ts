import { inRange } from '../problem.ts';
import { checkedFraction, checkedLevel, type Aim } from './exchange.ts';

/**
 * Continuous exchange: new water runs in and the same flow of mixed tank water runs out. `turnover` is the volume
 * passed over the volume of the system, so 80 L through 400 L is 0.2. Well mixed at every moment.
 */
const mostTurnover = 100;

/**
 * Level after a turnover: cs + (c0 - cs) exp(-V/Vt). Source: mass balance [mixing].
 * `turnover` 0 to 100. Check: 40, new water 0, 80 L through 400 L -> 32.74923. Doubt: unequal pumps shift salinity;
 * an outlet beside the inlet wastes new water.
 *
 * @throws Problem outside the ranges.
 */
export function afterContinuous(now: number, fresh: number, turnover: number): number {
  checkedLevel('now', now);
  checkedLevel('fresh', fresh);
  return (
    fresh + (now - fresh) * Math.exp(-inRange('volume passed', turnover, 0, mostTurnover, 'tank volumes'))
  );
}

/** Share of the old water gone after a turnover: 1 - exp(-V/Vt). Check: 0.3 -> 0.2592. */
export function fractionOfContinuous(turnover: number): number {
  return -Math.expm1(-inRange('volume passed', turnover, 0, mostTurnover, 'tank volumes'));
}

/**
 * Turnover that takes out as much as one batch of `fraction`: -ln(1 - f). `fraction` 0.001 to 0.99.
 * Check: 20 % of 400 L -> 0.2231436, so 89.25742 L; 30 % -> 0.3567.
 */
export function continuousEqualToBatch(fraction: number): number {
  return -Math.log1p(-checkedFraction(fraction, 0.99));
}

/**
 * Turnover that takes the level to the goal: ln((c0 - cs)/(ct - cs)). Source: mass balance [mixing].
 * Check: 40 to 10 with new water 0 in 400 L -> 554.51774 L.
 *
 * @returns undefined when the goal is not between the level now and the new water's, or is the new water's own.
 */
export function continuousForGoal({ now, goal, fresh }: Aim): number | undefined {
  checkedLevel('now', now);
  checkedLevel('goal', goal);
  checkedLevel('fresh', fresh);
  const left = (goal - fresh) / (now - fresh);
  if (now === goal) return 0;
  return left > 0 && left < 1 ? -Math.log(left) : undefined;
}
