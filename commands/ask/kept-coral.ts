import { findCorals } from '../../core/corals/find.ts';
import { gapBetween } from '../../core/corals/distance.ts';
import { hereWords, judgeLight } from '../../core/corals/rules/light.ts';
import { cm } from '../../core/corals/say.ts';
import type { Placed, Scene } from '../../core/corals/scene.ts';
import { counted } from '../../core/quantity/format.ts';
import { clean } from '../../core/quantity/clean.ts';
import { sceneOf } from '../coral/scene-of.ts';
import { spotSaid } from '../coral/spot-said.ts';
import type { Kept } from './kept-slots.ts';

/** Neighbours that are told. */
const MOST_NEAR = 2;

/** What is kept of the one coral a message names. */
interface KeptCoral {
  /** Its number among the member's corals. */
  readonly id: number;
  /** Spot, origin, age, light and neighbours, in one line. */
  readonly read: string;
  /** Light at its spot as far as readings near it tell, ready for `readQuantity`. */
  readonly light: string | undefined;
}

/** The kept coral that is meant by a name; undefined where there is none of it, or more than one. */
export function keptCoral(name: string, { keep, tank, nowMs }: Kept): KeptCoral | undefined {
  const scene = sceneOf(keep, tank, nowMs);
  const fitting = scene.corals.filter(isMeant(name));
  const [coral] = fitting;
  if (coral === undefined || fitting.length > 1) return undefined;
  const { here } = judgeLight(scene, coral);
  const told = [
    spotSaid(coral, scene.box),
    coral.origin === 'unknown' ? undefined : coral.origin,
    coral.daysHere === undefined ? undefined : `${counted(coral.daysHere, 'day')} here`,
    here === undefined ? undefined : hereWords(here),
    ...neighbours(scene, coral),
  ].filter((each) => each !== undefined);
  return {
    id: coral.id,
    read: `your ${coral.label} (coral ${coral.id} of ${tank.name}): ${told.join('; ')}`,
    light: here === undefined ? undefined : `${Math.round(here.ppfd)} PAR`,
  };
}

function isMeant(name: string): (coral: Placed) => boolean {
  const found = findCorals(name);
  const entries = found.kind === 'one' ? [found.entry] : found.kind === 'several' ? found.entries : [];
  const ids = new Set(entries.map(({ id }) => id));
  return ({ label, entry }) => clean(label) === clean(name) || ids.has(entry.id);
}

/** The nearest, with the water between them. */
function neighbours({ corals, box }: Scene, coral: Placed): readonly string[] {
  return corals
    .filter(({ id }) => id !== coral.id)
    .map((other) => ({ label: other.label, gap: gapBetween(coral, other, box) }))
    .toSorted((a, b) => a.gap.cm - b.gap.cm)
    .slice(0, MOST_NEAR)
    .map(({ label, gap }) => `${label} ${gap.rough ? 'about ' : ''}${cm(gap.cm)} away`);
}
