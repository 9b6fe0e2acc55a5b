import { hash, type FeatureGroup } from './learn/features.ts';
import type { Likely } from './likely.ts';
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

/** How often the parts are gone over again before the last time. */
const ROUNDS = 2;

/**
 * Below this probability a part hangs in the balance: on six batches left out 41 of 100 such parts were right, 39 times it
 * was the second likeliest. In sums every tenth message had one that matters, and half of those were read wrong.
 */
const BALANCE = 0.5;

/** The share of the words alone when all parts are gone over again; chosen on batches left out. */
const ALONE = 0.2;

/**
 * The part of every number of a message: first by the words and what the message wants, then all are gone over again with
 * the parts on both sides. What a unit rules out is never chosen ("75 gal" is no level).
 */
export function rolesIn(
  scanned: Scanned,
  kinds: readonly Likely[],
  parts: Learnt,
  ofs: Learnt,
): readonly Said[] {
  const numbers = scanned.tokens.flatMap(({ number }, at) => (number === undefined ? [] : [{ number, at }]));
  const asked = numbers.slice(0, MOST_NUMBERS).map(({ number, at }) => ({
    number,
    at,
    alone: chancesOf(parts, roleFeatures({ scanned, kinds, at, before: undefined })),
    allowed: partsAllowed(number),
  }));
  const found = asked.map(({ alone, allowed }) => likeliest(parts, alone, partNames, allowed)[0]);
  const read: Again[] = [];
  const again = (n: number, at: number): Again => {
    const known = [...found.slice(0, n), '|', ...found.slice(n + 1)].join(' ');
    const last = read[n];
    if (last?.known === known) return last;
    const [before, after] = [found.slice(0, n), found.slice(n + 1)];
    const groups = roleFeatures({ scanned, kinds, at, before, after });
    const chances = mixed(chancesOf(parts, groups), asked[n]?.alone);
    const [part, probability] = likeliest(parts, chances, partNames, asked[n]?.allowed);
    const others = new Set([...(asked[n]?.allowed ?? partNames)].filter((name) => name !== part));
    const perhaps = others.size === 0 ? undefined : likeliest(parts, chances, partNames, others)[0];
    return (read[n] = { known, groups, part, perhaps, probability });
  };
  for (let round = 0; round < ROUNDS; round++)
    asked.forEach(({ at }, n) => {
      found[n] = again(n, at).part;
    });
  const said = asked.map(({ number, at }, n): Said => {
    const { groups, part, perhaps, probability } = again(n, at);
    const ofOf = (as: PartName): OfName =>
      likeliest(ofs, chancesOf(ofs, withPart(groups, as)), ofNames, ofsAllowed(number, as))[0];
    const sure = saidAs(part, ofOf(part), number, probability);
    return probability >= BALANCE || perhaps === undefined
      ? sure
      : { ...sure, perhaps: { part: perhaps, of: ofOf(perhaps) } };
  });
  return [...said, ...numbers.slice(MOST_NUMBERS).map(({ number }) => saidAs('none', 'nothing', number, 1))];
}

/** A number gone over again: with which other parts, and what came of it. Nothing changed, nothing is done twice. */
interface Again {
  readonly known: string;
  readonly groups: readonly FeatureGroup[];
  readonly part: PartName;
  readonly perhaps: PartName | undefined;
  readonly probability: number;
}

/** Geometric mean of two readings of one number. */
function mixed(again: Float32Array, alone: Float32Array | undefined): Float32Array {
  return again.map((chance, at) => chance ** (1 - ALONE) * (alone?.[at] ?? chance) ** ALONE);
}

function chancesOf({ packed, vocabulary }: Learnt, groups: readonly FeatureGroup[]): Float32Array {
  return probabilities(packed, vectorOf(groups, vocabulary));
}

/** What a number is of hangs on its part. */
export function withPart(groups: readonly FeatureGroup[], part: PartName): readonly FeatureGroup[] {
  const [first, ...rest] = groups;
  if (first === undefined) return groups;
  return [{ ...first, ids: [...first.ids, hash(`part ${part}`)] }, ...rest];
}

function likeliest<T extends string>(
  { packed }: Learnt,
  chances: Float32Array,
  names: readonly T[],
  allowed: ReadonlySet<T> | undefined,
): readonly [T, number] {
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
