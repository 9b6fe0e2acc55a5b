import { coralIn, problemsOf } from './check.ts';
import { nearest } from './room.ts';
import { ruleWords } from './rule-words.ts';
import { monthsToTrouble } from './rules/growth.ts';
import { judgeLight } from './rules/light.ts';
import { standingPair } from './rules/pair.ts';
import { parRange } from '../light/band.ts';
import { cm } from './say.ts';
import type { Finding, Placed, Scene, Spot } from './scene.ts';
import { spotGrid } from './spot-grid.ts';
import { spotWords } from './spot-words.ts';

export interface Proposal {
  readonly spot: Spot;
  /** "30 cm from the left, 10 cm from the front, on the sand". */
  readonly words: string;
  readonly why: string;
  /** What is left to watch there; never a 'move'. */
  readonly watch: readonly Finding[];
}

/** Best first. With no spot at all `obstacle` is the worst that the best spot of the grid does not cure. */
export interface Proposals {
  readonly spots: readonly Proposal[];
  readonly obstacle?: Finding | undefined;
  readonly doubt: string;
}

const MOST = 3;
/** So many good spots are looked at in full before the best are kept. */
const LOOKED_AT = 6;
/** A neighbour that grows too near within a year counts as so many cm of a missing gap: project rule. */
const GROWING = 4;
/** Where other spots have a reading, one without counts as this part off in light: project rule. */
const UNREAD = 1;
/** A height that does not fit counts so many times its part of the water: project rule. */
const HEIGHT_COUNTS = 8;
/** Two proposals are this part of the length apart, or they are one: project rule. */
const APART = 1 / 5;

/**
 * Up to three better spots for a coral of the scene: those of `spotsFor` with less trouble than where it stands. None,
 * without an obstacle, when nothing is better.
 *
 * @throws Problem when the coral is not in the scene.
 */
export function propose(scene: Scene, id: number): Proposals {
  const coral = coralIn(scene, id);
  const now = problemsOf(scene, coral);
  const found = spotsFor(scene, coral);
  const better = found.spots.filter(({ watch }) => hasMove(now) || trouble(watch) < trouble(now));
  return { ...found, spots: better };
}

/**
 * Up to three spots for a coral, in the scene already or not, over a grid of the box: on the ground it wants, clear of
 * the others, in fitting light where that is known. No spot with a 'move' finding is named. Where the rock stands is only
 * thought (`spotGrid`), so a height is a wish. Its present spot only breaks ties.
 */
export function spotsFor(scene: Scene, coral: Placed): Proposals {
  const others = scene.corals.filter(({ id }) => id !== coral.id);
  const tried = spotGrid(scene.box, coral, others)
    .map((spot) => ranked(scene, { ...coral, spot, rough: false }, coral.spot, others))
    .sort((a, b) => Number(a.hopeless) - Number(b.hopeless) || a.penalty - b.penalty);
  const good: (Proposal & { readonly penalty: number })[] = [];
  let refused: readonly Finding[] | undefined;
  for (const { moved, hopeless, penalty } of tried) {
    if (good.length === LOOKED_AT || (hopeless && (good.length > 0 || refused !== undefined))) break;
    if (good.some(({ spot }) => apartCm(spot, moved.spot) < scene.box.lengthCm * APART)) continue;
    const there = { ...scene, corals: [...others, moved] };
    const watch = problemsOf(there, moved).filter(({ verdict }) => verdict !== 'settled');
    if (hasMove(watch)) refused ??= watch;
    else
      good.push({
        spot: moved.spot,
        words: spotWords(moved.spot),
        why: reasons(there, moved, watch),
        watch,
        penalty,
      });
  }
  const spots = good
    .sort((a, b) => trouble(a.watch) + a.penalty - trouble(b.watch) - b.penalty)
    .slice(0, MOST)
    .map(({ spot, words, why, watch }) => ({ spot, words, why, watch }));
  return { spots, obstacle: spots.length > 0 ? undefined : worstOf(refused ?? []), doubt: doubtOf(coral) };
}

interface Ranked {
  readonly moved: Placed;
  /** Certain to be a 'move': a gap or the light is wrong. */
  readonly hopeless: boolean;
  readonly penalty: number;
}

/** A cheap measure of a spot: missing gaps count most, then light, then the way there. */
function ranked(scene: Scene, moved: Placed, was: Spot, others: readonly Placed[]): Ranked {
  let [short, tight] = [0, 0];
  for (const other of others) {
    const pair = standingPair(scene, moved, other);
    const { need, gap } = pair;
    short += Math.max(0, need.moveBelowCm - gap.cm);
    tight += Math.max(0, need.watchBelowCm - gap.cm) + (monthsToTrouble(pair) === undefined ? 0 : GROWING);
  }
  const { verdict, here, need } = judgeLight(scene, moved);
  const unread = scene.light.length > 0 ? UNREAD : 0;
  const off =
    here === undefined
      ? unread + HEIGHT_COUNTS * heightOff(scene, moved)
      : Math.abs(here.ppfd / need.startPpfd - 1);
  const light = { move: 100, watch: 20, settled: 0 }[verdict] + 5 * off;
  const way = apartCm(moved.spot, was) / scene.box.lengthCm;
  return { moved, hopeless: short > 0 || verdict === 'move', penalty: 10 * short + tight + light + way };
}

/** Where there is no reading: brighter corals higher, the top for those that start at 250 PAR. Project rule. */
function heightOff({ box }: Scene, { entry, spot }: Placed): number {
  return Math.abs(spot.zCm / box.heightCm - Math.min(3 / 4, (entry.light.startPpfd / 250) * (3 / 4)));
}

function reasons(scene: Scene, coral: Placed, watch: readonly Finding[]): string {
  const { here } = judgeLight(scene, coral);
  const near = nearest(scene, coral);
  const light =
    here === undefined
      ? 'no light reading near, so the height goes by how bright it likes it (project rule)'
      : `light ${parRange(here.lowPpfd, here.highPpfd)}, ${cm(here.nearestCm)} from a reading`;
  const room =
    near === undefined ? 'Nothing else near' : `Nearest: ${near.coral.label}, ${cm(near.gapCm)} off`;
  const left = [...new Set(watch.map(({ rule }) => ruleWords[rule]))];
  const still = left.length === 0 ? 'nothing to watch' : `still to watch: ${left.join(', ')}`;
  return `${room}; ${light}; ${still}.`;
}

function doubtOf({ entry }: Placed): string {
  return entry.ground.value === 'sand'
    ? 'I do not know where your sand is open.'
    : 'I do not know where your rock stands: take the nearest firm place at that height.';
}

function hasMove(findings: readonly Finding[]): boolean {
  return findings.some(({ verdict }) => verdict === 'move');
}

function trouble(findings: readonly Finding[]): number {
  return findings.reduce((sum, { verdict, weight }) => sum + (verdict === 'settled' ? 0 : weight), 0);
}

function worstOf(findings: readonly Finding[]): Finding | undefined {
  return findings
    .filter(({ verdict }) => verdict === 'move')
    .reduce<Finding | undefined>(
      (worst, one) => (worst === undefined || one.weight > worst.weight ? one : worst),
      undefined,
    );
}

function apartCm(a: Spot, b: Spot): number {
  return Math.sqrt((a.xCm - b.xCm) ** 2 + (a.yCm - b.yCm) ** 2 + (a.zCm - b.zCm) ** 2);
}
