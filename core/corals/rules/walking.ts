import { basisWords } from '../basis-words.ts';
import { published, type Bases } from '../basis.ts';
import { cm, missingCm } from '../say.ts';
import type { Finding, Placed, Scene } from '../scene.ts';
import type { StandingPair } from './pair.ts';

/** Free room on all sides of a loose plate coral, cm: common practice. */
const PLATE_ROOM_CM = 15;
/** A mushroom that lets go drifts to its neighbours, cm: project rule. */
const MUSHROOM_ROOM_CM = 5;

const roomBasis: Bases = [
  { kind: 'practice', note: '15 cm free on all sides' },
  published('ChadwickFurmanLoya1992', 'small discs moved up to 6 cm a day'),
];
const driftBasis: Bases = [{ kind: 'project rule', note: '5 cm round a mushroom' }];
const anemoneBasis: Bases = [{ kind: 'practice', note: 'they wander after a change in light, flow or food' }];

/** Loose plates and mushrooms near a neighbour. Plates spare each other (Chadwick-Furman & Loya 1992). */
export function walkingPairFinding({ one, other, gap }: StandingPair): Finding | undefined {
  if (gap.cm >= PLATE_ROOM_CM) return undefined;
  const walker = [one, other].find((coral) => roomOf(coral) > gap.cm);
  if (walker === undefined || alike(one, other)) return undefined;
  const neighbour = walker === one ? other : one;
  const roomCm = roomOf(walker);
  const plate = isFungiid(walker);
  const about = gap.rough ? 'about ' : '';
  return {
    rule: 'walking',
    verdict: 'watch',
    corals: [neighbour.id, walker.id],
    reason: plate
      ? `${walker.label}: moves by inflating, and ${neighbour.label} is ${about}${cm(gap.cm)} off. It harms other stony corals it drifts against.`
      : `${walker.label}: can let go and settle elsewhere, and ${neighbour.label} is ${about}${cm(gap.cm)} off.`,
    basis: basisWords(walker.entry.moves.basis, plate ? roomBasis : driftBasis),
    cure: `${missingCm(roomCm - gap.cm)} further apart: at least to ${cm(roomCm)}. Look where it is every few days.`,
    apartCm: roomCm,
    weight: plate ? 18 : 10,
  };
}

/** An anemone that walks is a matter for the whole tank. */
export function walkingFindings(scene: Scene, coral: Placed): readonly Finding[] {
  const others = scene.corals.filter((other) => other.id !== coral.id && other.entry.group !== 'anemone');
  if (coral.entry.group !== 'anemone' || coral.entry.moves.value !== 'walks' || others.length === 0)
    return [];
  return [
    {
      rule: 'walking',
      verdict: 'watch',
      corals: [coral.id],
      reason: `${coral.label}: chooses its own spot and can reach any of the ${others.length} other ${others.length === 1 ? 'coral' : 'corals'} by walking.`,
      basis: basisWords(coral.entry.moves.basis, anemoneBasis),
      cure: `A rock island of its own, ${cm(coral.entry.sting.keepClearCm)} clear all round, placed before the corals; raise light slowly.`,
      weight: 26,
    },
  ];
}

/** Plates beside plates, mushrooms beside mushrooms. */
function alike(one: Placed, other: Placed): boolean {
  return isFungiid(one)
    ? isFungiid(other)
    : one.entry.group === 'mushroom' && other.entry.group === 'mushroom';
}

function isFungiid({ entry }: Placed): boolean {
  return entry.family?.name === 'Fungiidae';
}

function roomOf(coral: Placed): number {
  if (isFungiid(coral) && coral.entry.form.kinds.includes('free-living')) return PLATE_ROOM_CM;
  return coral.entry.group === 'mushroom' && coral.entry.moves.value !== 'stays' ? MUSHROOM_ROOM_CM : 0;
}
