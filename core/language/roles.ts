import { hash, type FeatureGroup } from './learn/features.ts';
import { probabilities, type Packed } from './learn/packed.ts';
import { roleFeatures } from './learn/role-features.ts';
import { vectorOf, type Vocabulary } from './learn/vocabulary.ts';
import { ofsAllowed, partsAllowed } from './limits-of-parts.ts';
import { ofNames, partNames, type OfName, type PartName } from './parts.ts';
import { saidAs, type Said } from './said.ts';
import type { Scanned } from './tokens.ts';

/** A packed model with the places of its features. */
export interface Learnt {
  readonly packed: Packed;
  readonly vocabulary: Vocabulary;
}

/** Numbers of one message whose part is asked for; in a longer list the others play none. */
const MOST_NUMBERS = 40;

/** How often the parts are gone over again once all are known. */
const ROUNDS = 2;

/**
 * The part of every number of a message, from the first to the last: each is told the parts before it, then all are gone
 * over again with the parts on both sides. What a unit rules out is never chosen ("75 gal" is no level).
 */
export function rolesIn(scanned: Scanned, parts: Learnt, ofs: Learnt): readonly Said[] {
  const numbers = scanned.tokens.flatMap(({ number }, at) => (number === undefined ? [] : [{ number, at }]));
  const asked = numbers.slice(0, MOST_NUMBERS);
  const found: PartName[] = [];
  const groupsOf = (n: number, at: number, isFirst: boolean): readonly FeatureGroup[] =>
    roleFeatures({ scanned, at, before: found.slice(0, n), after: isFirst ? undefined : found.slice(n + 1) });
  for (let round = 0; round <= ROUNDS; round++)
    asked.forEach(({ number, at }, n) => {
      [found[n]] = likeliest<PartName>(parts, groupsOf(n, at, round === 0), partNames, partsAllowed(number));
    });
  const said = asked.map(({ number, at }, n): Said => {
    const groups = groupsOf(n, at, false);
    const [part, probability] = likeliest<PartName>(parts, groups, partNames, partsAllowed(number));
    const [of] = likeliest<OfName>(ofs, withPart(groups, part), ofNames, ofsAllowed(number, part));
    return saidAs(part, of, number, probability);
  });
  return [...said, ...numbers.slice(MOST_NUMBERS).map(({ number }) => saidAs('none', 'nothing', number, 1))];
}

/** What a number is of hangs on its part. */
export function withPart(groups: readonly FeatureGroup[], part: PartName): readonly FeatureGroup[] {
  const [first, ...rest] = groups;
  if (first === undefined) return groups;
  return [{ ...first, ids: [...first.ids, hash(`part ${part}`)] }, ...rest];
}

function likeliest<T extends string>(
  { packed, vocabulary }: Learnt,
  groups: readonly FeatureGroup[],
  names: readonly T[],
  allowed: ReadonlySet<T> | undefined,
): readonly [T, number] {
  const chances = probabilities(packed, vectorOf(groups, vocabulary));
  let best: T | undefined;
  let most = -1;
  packed.labels.forEach((label, at) => {
    const name = names.find((each) => each === label);
    const chance = chances[at] ?? 0;
    if (name === undefined || (allowed !== undefined && !allowed.has(name)) || chance <= most) return;
    best = name;
    most = chance;
  });
  const [fallback] = allowed ?? names;
  return [best ?? fallback ?? (names[0] as T), most];
}
