import { Problem } from '../problem.ts';
import { say } from '../wording/say.ts';
import { roomFindings, settledFinding } from './room.ts';
import { chemistryFinding } from './rules/chemistry.ts';
import { flowFindings } from './rules/flow.ts';
import { groundFindings } from './rules/ground.ts';
import { growthFinding } from './rules/growth.ts';
import { lawFindings } from './rules/law.ts';
import { lightFindings } from './rules/light.ts';
import { standingPair } from './rules/pair.ts';
import { peopleFindings } from './rules/people.ts';
import { pumpFindings } from './rules/pump.ts';
import { shadeFinding } from './rules/shade.ts';
import { stingFinding } from './rules/sting.ts';
import { walkingFindings, walkingPairFinding } from './rules/walking.ts';
import type { Finding, Placed, Scene, Verdict } from './scene.ts';

const verdictOrder: readonly Verdict[] = ['move', 'watch', 'settled'];

const ruleOrder: readonly Finding['rule'][] = [
  'people',
  'sting',
  'light',
  'ground',
  'growth',
  'chemistry',
  'pump',
  'walking',
  'shade',
  'room',
  'flow',
  'law',
];

/**
 * The whole tank: every problem, the cautions to people, the legal notes of single kinds, and one settled finding for
 * each coral that has no problem. Move first, then the heavier; the order of the corals does not matter.
 */
export function check(scene: Scene): readonly Finding[] {
  const { corals } = scene;
  const found = [...corals.flatMap((coral) => aloneFindings(scene, coral)), ...everyPair(scene, corals)];
  const troubled = idsOf(found.filter(({ verdict }) => verdict !== 'settled'));
  return sorted([
    ...found,
    ...corals.flatMap((coral) => [
      ...peopleFindings(coral),
      ...(coral.entry.law.notes.length > 0 ? lawFindings(coral) : []),
      ...(troubled.has(coral.id) ? [] : [settledFinding(scene, coral)]),
    ]),
  ]);
}

/**
 * All that is to say of one coral in the scene: the same, with the flow it wants and its listing in law.
 *
 * @throws Problem when it is not in the scene.
 */
export function checkOne(scene: Scene, id: number): readonly Finding[] {
  const coral = coralIn(scene, id);
  const found = problemsOf(scene, coral);
  const calm = found.every(({ verdict }) => verdict === 'settled');
  return sorted([
    ...found,
    ...peopleFindings(coral),
    ...flowFindings(coral),
    ...lawFindings(coral),
    ...(calm ? [settledFinding(scene, coral)] : []),
  ]);
}

/** What the rules find of one coral by itself and beside each other one, unsorted. */
export function problemsOf(scene: Scene, coral: Placed): readonly Finding[] {
  return [
    ...aloneFindings(scene, coral),
    ...scene.corals.flatMap((other) => (other.id === coral.id ? [] : pairFindings(scene, coral, other))),
  ];
}

/** The coral with this id. */
export function coralIn(scene: Scene, id: number): Placed {
  const coral = scene.corals.find((one) => one.id === id);
  if (coral !== undefined) return coral;
  throw new Problem(say('coral.noSuchCoral'), { field: 'coral', given: String(id) });
}

const none: readonly Finding[] = [];
const pairRules = [stingFinding, chemistryFinding, growthFinding, shadeFinding, walkingPairFinding] as const;

/** What is found of two corals, the same whichever comes first. */
export function pairFindings(scene: Scene, a: Placed, b: Placed): readonly Finding[] {
  const pair = standingPair(scene, a, b);
  const found: Finding[] = [];
  for (const rule of pairRules) {
    const finding = rule(pair);
    if (finding !== undefined) found.push(finding);
  }
  return found.length === 0 ? none : found;
}

function aloneFindings(scene: Scene, coral: Placed): readonly Finding[] {
  return [
    ...lightFindings(scene, coral),
    ...groundFindings(coral),
    ...roomFindings(scene, coral),
    ...walkingFindings(scene, coral),
    ...pumpFindings(coral),
  ];
}

function everyPair(scene: Scene, corals: readonly Placed[]): readonly Finding[] {
  const found: Finding[] = [];
  for (const [i, one] of corals.entries()) {
    for (const other of corals.slice(i + 1)) found.push(...pairFindings(scene, one, other));
  }
  return found;
}

function sorted(findings: readonly Finding[]): readonly Finding[] {
  return [...findings].sort(
    (a, b) =>
      verdictOrder.indexOf(a.verdict) - verdictOrder.indexOf(b.verdict) ||
      b.weight - a.weight ||
      ruleOrder.indexOf(a.rule) - ruleOrder.indexOf(b.rule) ||
      (a.corals[0] ?? 0) - (b.corals[0] ?? 0) ||
      (a.corals[1] ?? 0) - (b.corals[1] ?? 0),
  );
}

function idsOf(findings: readonly Finding[]): ReadonlySet<number> {
  return new Set(findings.flatMap(({ corals }) => corals));
}
