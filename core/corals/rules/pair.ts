import { carried, gapBetween, type Gap } from '../distance.ts';
import { pairNeed, type PairNeed } from '../reach.ts';
import type { Placed, Scene } from '../scene.ts';

/** Two corals where they stand: the first has the lower id, so nothing hangs on the order they came in. */
export interface StandingPair {
  readonly one: Placed;
  readonly other: Placed;
  readonly gap: Gap;
  readonly need: PairNeed;
  /** What the reach of the first counts times towards the other, and the other way. */
  readonly oneFactor: number;
  readonly otherFactor: number;
}

export function standingPair(scene: Scene, a: Placed, b: Placed): StandingPair {
  const [one, other] = a.id <= b.id ? [a, b] : [b, a];
  const oneFactor = carried(one, other, scene.flow);
  const otherFactor = carried(other, one, scene.flow);
  const need = pairNeed(one.entry, other.entry, oneFactor, otherFactor);
  return { one, other, gap: gapBetween(one, other, scene.box), need, oneFactor, otherFactor };
}

/** Whether the sting of either side counts for more because the water carries it towards the other. */
export function isCarried({ need, oneFactor, otherFactor }: StandingPair): boolean {
  const { oneReach, otherReach } = need.facts;
  return (oneFactor > 1 && oneReach.highCm > 0) || (otherFactor > 1 && otherReach.highCm > 0);
}
