import { basisWords } from '../basis-words.ts';
import type { Bases } from '../basis.ts';
import { cm } from '../say.ts';
import type { Finding, Placed } from '../scene.ts';

/** Up to this height a spot counts as the sand, cm: project rule. */
const SAND_CM = 2;

const plateBasis: Bases = [
  { kind: 'practice', note: 'rock cuts the underside; these move by inflating, so never glue or wedge them' },
];
const heightBasis: Bases = [{ kind: 'project rule', note: 'up to 2 cm counts as the sand' }];

/** Sand corals on rock and rock corals on the sand. A free-living one on rock is to move; the rest is to watch. */
export function groundFindings(coral: Placed): readonly Finding[] {
  const { entry, label, spot } = coral;
  const onSand = spot.zCm <= SAND_CM;
  if (entry.ground.value === 'sand' && !onSand) {
    const loose = entry.form.kinds.includes('free-living');
    return [
      {
        rule: 'ground',
        verdict: loose ? 'move' : 'watch',
        corals: [coral.id],
        reason: loose
          ? `${label}: free-living, for open sand, and now ${cm(spot.zCm)} up. Rock cuts the underside, and it moves by inflating.`
          : `${label}: for sand, and now ${cm(spot.zCm)} up.`,
        basis: basisWords(entry.ground.basis, ...(loose ? [plateBasis] : []), heightBasis),
        cure: loose
          ? 'Down to open sand, loose, with gentle flow and 15 cm free on all sides. No glue.'
          : 'Down to the sand, unless it lies on a flat ledge with sand on it.',
        weight: loose ? 80 : 23,
      },
    ];
  }
  if (entry.ground.value === 'rock' && onSand) {
    return [
      {
        rule: 'ground',
        verdict: 'watch',
        corals: [coral.id],
        reason: `${label}: for rock, and now on the sand. It can be buried or knocked over.`,
        basis: basisWords(entry.ground.basis, heightBasis),
        cure: 'Fix it to a rock, or to a stone that stands above the sand.',
        weight: 11,
      },
    ];
  }
  return [];
}
