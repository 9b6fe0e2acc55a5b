import { basisName } from '../../core/corals/basis-words.ts';
import { corals } from '../../core/corals/coral-list.ts';
import type { CoralEntry } from '../../core/corals/entry.ts';
import { cmRange } from '../../core/corals/say.ts';
import { answer, type Answer } from '../answer.ts';
import { palytoxinCautions } from './palytoxin-cautions.ts';

const MOST = 10;
const order = ['easy', 'moderate', 'demanding'];

/** "which corals do not sting": the weakest stings of the guide, the easiest to keep first. */
export function gentleAnswer(): Answer {
  const gentle = corals
    .filter(({ sting, photosynthetic }) => sting.potency === 'none' && photosynthetic)
    .sort((a, b) => ease(a) - ease(b));
  const first = gentle.slice(0, 3).map(({ names }) => names.common[0]);
  return answer({
    headline: `No coral is safe with all others, but these have no sting to speak of: ${first.join(', ')}.`,
    isList: true,
    facts: gentle.slice(0, MOST).map(({ names, sting, hardiness }) => ({
      label: names.common[0],
      value: `${hardiness.value}; reach ${cmRange(sting.reachLowCm, sting.reachHighCm)} (${basisName(sting.potencyBasis)}); ${sting.weapon}`,
    })),
    steps: [
      'Leave room all the same: a stronger neighbour can reach them, and many grow over others.',
      'Ask for a pair: "can zoas stand next to a torch".',
    ],
    dangers: palytoxinCautions(gentle),
    sources: ['practice', 'memory'],
  });
}

/** Lower is easier; of equals those first that build no skeleton. */
function ease({ hardiness, stonyDemand }: CoralEntry): number {
  return 2 * order.indexOf(hardiness.value) + (stonyDemand.value === 'none' ? 0 : 1);
}
