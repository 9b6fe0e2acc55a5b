import { basisWords } from '../basis-words.ts';
import type { Bases } from '../basis.ts';
import { diameterAfter } from '../growth.ts';
import { cm, missingCm } from '../say.ts';
import type { Finding, Placed } from '../scene.ts';
import type { StandingPair } from './pair.ts';

/** Corals that want less than this at the least live under a ledge well enough, umol m-2 s-1: project rule. */
const SHADE_LOVING_PPFD = 50;

const shadeBasis: Bases = [{ kind: 'practice', note: 'plan for the shade of plates and tables in a year' }];

/** Plates and tables above what stands below them, now and in a year. A light-hungry one already covered is to move. */
export function shadeFinding({ one, other, gap }: StandingPair): Finding | undefined {
  const above = one.spot.zCm > other.spot.zCm ? one : other;
  const below = above === one ? other : one;
  if (above.spot.zCm <= below.spot.zCm || !casts(above) || !suffers(below)) return undefined;
  const dx = above.spot.xCm - below.spot.xCm;
  const dy = above.spot.yCm - below.spot.yCm;
  const asideCm = Math.sqrt(dx * dx + dy * dy);
  const inAYear = diameterAfter(above.entry, above.diameterCm, 12);
  const [nowCm, laterCm] = [above.diameterCm / 2, inAYear.high / 2];
  if (asideCm >= laterCm) return undefined;
  const now = asideCm < nowCm;
  const move = now && below.entry.light.lowPpfd >= MOVE_FROM_PPFD;
  const about = gap.rough ? 'about ' : '';
  return {
    rule: 'shade',
    verdict: move ? 'move' : 'watch',
    corals: [below.id, above.id],
    reason:
      `${now ? `${above.label} shades ${below.label} already` : `${above.label} will shade ${below.label} within a year`}. It is half as wide as ${cm(2 * nowCm)} now and up to ${cm(2 * laterCm)} in a year; ` +
      `${below.label} stands ${about}${cm(asideCm)} aside, below it.`,
    basis: basisWords(above.entry.shade.basis, shadeBasis, above.entry.growth.basis),
    cure: now
      ? `${missingCm(laterCm - asideCm)} further to the side: at least to ${cm(laterCm)}, or trim ${above.label}.`
      : `Trim ${above.label} in time, or ${missingCm(laterCm - asideCm)} further to the side.`,
    weight: (move ? 50 : 12) + (now ? 8 : 0),
  };
}

/** From this least light on, standing in the shade is no place for it, umol m-2 s-1: project rule. */
const MOVE_FROM_PPFD = 100;

function casts({ entry }: Placed): boolean {
  return entry.shade.value || entry.form.kinds.includes('table');
}

function suffers({ entry }: Placed): boolean {
  return entry.photosynthetic && entry.light.lowPpfd >= SHADE_LOVING_PPFD;
}
