import { monthsUntil } from '../../core/corals/growth.ts';
import { nearest } from '../../core/corals/room.ts';
import { standingPair } from '../../core/corals/rules/pair.ts';
import { cm, monthRange } from '../../core/corals/say.ts';
import type { Placed, Scene } from '../../core/corals/scene.ts';
import type { Fact } from '../answer.ts';

/** When a coral meets its nearest neighbour, and when it comes nearer than the two should stand. */
export function neighbourFacts(scene: Scene, coral: Placed): readonly Fact[] {
  const near = nearest(scene, coral);
  if (near === undefined) return [{ label: 'nearest neighbour', value: 'none: it has the tank to itself' }];
  const { gap, need } = standingPair(scene, coral, near.coral);
  const about = gap.rough ? 'about ' : '';
  const keepCm = need.moveBelowCm;
  const months = (untilCm: number): string => {
    const found = monthsUntil(coral, near.coral, near.gapCm, untilCm);
    if (found === undefined) return 'not within five years';
    return found.soonest === 0 ? 'now' : monthRange(found.soonest, found.latest);
  };
  return [
    {
      label: 'nearest neighbour',
      value: `${near.coral.label}, ${about}${cm(near.gapCm)} off; they meet ${inWords(months(0))} (project rule)`,
    },
    ...(keepCm > 0
      ? [
          {
            label: `closer than the ${cm(keepCm)} the two should keep`,
            value: months(keepCm),
          },
        ]
      : []),
  ];
}

function inWords(months: string): string {
  return /^(?:now|not)/.test(months) ? months : `in ${months}`;
}
