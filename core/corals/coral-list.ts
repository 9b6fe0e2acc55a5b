import { acans } from './entries/acans.ts';
import { acroporas } from './entries/acroporas.ts';
import { attachedFungiids } from './entries/attached-fungiids.ts';
import { blastos } from './entries/blastos.ts';
import { bubbles } from './entries/bubbles.ts';
import { chalices } from './entries/chalices.ts';
import { cups } from './entries/cups.ts';
import { domeBrains } from './entries/dome-brains.ts';
import { euphylliids } from './entries/euphylliids.ts';
import { fleshyBrains } from './entries/fleshy-brains.ts';
import { flowerpots } from './entries/flowerpots.ts';
import { frogspawns } from './entries/frogspawns.ts';
import { galaxea } from './entries/galaxea.ts';
import { gorgonians } from './entries/gorgonians.ts';
import { heads } from './entries/heads.ts';
import { horns } from './entries/horns.ts';
import { hostAnemones } from './entries/host-anemones.ts';
import { leathers } from './entries/leathers.ts';
import { leaves } from './entries/leaves.ts';
import { looseFungiids } from './entries/loose-fungiids.ts';
import { mats } from './entries/mats.ts';
import { mazeBrains } from './entries/maze-brains.ts';
import { montiporas } from './entries/montiporas.ts';
import { mushrooms } from './entries/mushrooms.ts';
import { nearAcroporas } from './entries/near-acroporas.ts';
import { otherAnemones } from './entries/other-anemones.ts';
import { pocilloporids } from './entries/pocilloporids.ts';
import { porites } from './entries/porites.ts';
import { singlePolyps } from './entries/single-polyps.ts';
import { skeletonBuilders } from './entries/skeleton-builders.ts';
import { smallStars } from './entries/small-stars.ts';
import { sunCorals } from './entries/sun-corals.ts';
import { trees } from './entries/trees.ts';
import { zoanthids } from './entries/zoanthids.ts';
import type { CoralEntry } from './entry.ts';

/** Every coral of the guide, kinds that are alike beside each other. */
export const corals: readonly CoralEntry[] = [
  ...euphylliids,
  ...frogspawns,
  ...galaxea,
  ...bubbles,
  ...fleshyBrains,
  ...singlePolyps,
  ...acans,
  ...blastos,
  ...heads,
  ...cups,
  ...sunCorals,
  ...flowerpots,
  ...looseFungiids,
  ...attachedFungiids,
  ...chalices,
  ...domeBrains,
  ...mazeBrains,
  ...horns,
  ...smallStars,
  ...acroporas,
  ...nearAcroporas,
  ...montiporas,
  ...pocilloporids,
  ...porites,
  ...leaves,
  ...skeletonBuilders,
  ...leathers,
  ...trees,
  ...mats,
  ...gorgonians,
  ...zoanthids,
  ...mushrooms,
  ...hostAnemones,
  ...otherAnemones,
];

const byId = new Map(corals.map((entry) => [entry.id, entry]));

/** The entry with this id; undefined when there is none. */
export function coralById(id: string): CoralEntry | undefined {
  return byId.get(id);
}
