import type { Ally, CoralEntry } from './entry.ts';
import type { PairEffect, PairRule } from './pair-rules.ts';
import { pairRulesFor, type AppliedRule } from './pairs.ts';
import { narrowness, selects } from './selector.ts';
import { stingReach, type StingReach } from './sting-reach.ts';

/**
 * What is known of two kinds beside each other, before any place or reach. `moveGapCm`: closer than this one should
 * move. `watchGapCm`: closer than this they want watching. `tiers`: whether their own reach counts besides: not at all
 * between kinds known to get on, only as something to watch where a fact about the pair says less harm is done, in full
 * otherwise.
 */
export interface PairFacts {
  readonly moveGapCm: number;
  readonly watchGapCm: number;
  readonly tiers: 'none' | 'watch' | 'full';
  /** Reach of the first and of the second, cm at full stretch in still water. */
  readonly oneReach: StingReach;
  readonly otherReach: StingReach;
  /** The rules to tell: the narrowest, and the one with the widest gap where that is another. */
  readonly rules: readonly AppliedRule[];
  readonly ally: Ally | undefined;
  /** A wider rule warns of kinds that get on by a narrower one. */
  readonly disagree: boolean;
  /** The side that does the harm by the deciding rule. */
  readonly aggressor: CoralEntry | undefined;
}

/** Gap asked of allies that no pair rule names: project rule, as for hammers beside frogspawn. */
export const ALLY_GAP_CM = 3;

const harsh: ReadonlySet<PairEffect> = new Set(['keep apart', 'never close']);
const friendly: ReadonlySet<PairEffect> = new Set(['tolerated', 'usually tolerated', 'stand-off']);
/** Narrowness of a family: a rule at least this narrow on both sides speaks of the two kinds themselves. */
const NAMED = 2;

/** A rule about chemistry and contact of soft corals, told by `rules/chemistry.ts`. */
export function isChemistry({ rule }: AppliedRule): boolean {
  return rule.a.by === 'tag' && rule.a.of.includes('fleshy soft coral');
}

/** Looked up once a pair of kinds, in this order: the rules never change. */
const known = new Map<CoralEntry, Map<CoralEntry, PairFacts>>();

/**
 * The facts for two kinds, published and common ones alike, narrowest first:
 *
 * - a rule that names both kinds and lets them stand close decides; a wider warning then only asks to watch;
 * - a warning that names both kinds decides; a wider gap then only asks to watch;
 * - allies of an entry likewise, `ALLY_GAP_CM` apart unless they are sure;
 * - otherwise the widest gap of the warnings that hold: where they differ, the stronger one.
 */
export function pairFacts(one: CoralEntry, other: CoralEntry): PairFacts {
  let ofOne = known.get(one);
  if (ofOne === undefined) known.set(one, (ofOne = new Map()));
  let facts = ofOne.get(other);
  if (facts === undefined) ofOne.set(other, (facts = judged(one, other)));
  return facts;
}

function judged(one: CoralEntry, other: CoralEntry): PairFacts {
  const [first, ...wider] = pairRulesFor(one, other).filter((applied) => !isChemistry(applied));
  const all = first === undefined ? [] : [first, ...wider.filter(({ rule }) => !spokenFor(rule, first.rule))];
  const ally = allyOf(one, other);
  const widest = widestOf(all.filter(({ rule }) => harsh.has(rule.effect)));
  const { moveGapCm, watchGapCm, tiers, disagree, deciding } = ruling(all, widest, ally);
  return {
    moveGapCm,
    watchGapCm,
    tiers,
    oneReach: stingReach(one),
    otherReach: stingReach(other),
    rules: [...new Set([first, widest].flatMap((applied) => applied ?? []))],
    ally,
    disagree,
    aggressor: deciding === undefined ? undefined : aggressorOf(deciding),
  };
}

type Ruling = Pick<PairFacts, 'moveGapCm' | 'watchGapCm' | 'tiers' | 'disagree'> & {
  readonly deciding: AppliedRule | undefined;
};

/** What the rules come to: `all` the narrowest first, `widest` the warning with the widest gap. */
function ruling(
  all: readonly AppliedRule[],
  widest: AppliedRule | undefined,
  ally: Ally | undefined,
): Ruling {
  const [first] = all;
  const warnedCm = widest?.rule.gapCm ?? 0;
  const watchGapCm = widestOf(all)?.rule.gapCm ?? 0;
  if (first !== undefined && decidesAlone(first.rule)) {
    const tiers = friendly.has(first.rule.effect) ? 'none' : 'watch';
    const disagree = warnedCm > first.rule.gapCm;
    const gapCm = Math.max(first.rule.gapCm, warnedCm);
    return { moveGapCm: 0, watchGapCm: gapCm, tiers, disagree, deciding: disagree ? widest : first };
  }
  if (first !== undefined && namesBoth(first.rule)) {
    return { moveGapCm: first.rule.gapCm, watchGapCm, tiers: 'full', disagree: false, deciding: first };
  }
  if (ally !== undefined && ally.confidence !== 'uncertain') {
    const own = ally.confidence === 'good' ? 0 : ALLY_GAP_CM;
    const disagree = warnedCm > own;
    return { moveGapCm: 0, watchGapCm: Math.max(own, watchGapCm), tiers: 'none', disagree, deciding: widest };
  }
  return { moveGapCm: warnedCm, watchGapCm, tiers: 'full', disagree: false, deciding: widest };
}

/** A wider warning of the very paper that lets the two kinds stand close speaks of others: no contradiction. */
function spokenFor(wider: PairRule, narrow: PairRule): boolean {
  const sources = friendly.has(narrow.effect) ? publishedIn(narrow) : [];
  return publishedIn(wider).some((source) => sources.includes(source));
}

function publishedIn({ effectBasis }: PairRule): readonly string[] {
  return effectBasis.flatMap((basis) => (basis.kind === 'published' ? [basis.source] : []));
}

function widestOf(rules: readonly AppliedRule[]): AppliedRule | undefined {
  return rules.reduce<AppliedRule | undefined>(
    (widest, one) => (widest === undefined || one.rule.gapCm > widest.rule.gapCm ? one : widest),
    undefined,
  );
}

/** The side that does not lose; of "this kind beside anything", this kind, unless both are. */
function aggressorOf({ rule, a, b }: AppliedRule): CoralEntry | undefined {
  if (rule.loser !== undefined) return rule.loser === 'a' ? b : a;
  return rule.b.by === 'any' && !selects(rule.a, b) ? a : undefined;
}

/** A rule that lets two named kinds stand close, or says less than a full warning of them. */
function decidesAlone(rule: PairRule): boolean {
  if (harsh.has(rule.effect)) return false;
  return namesBoth(rule) || (rule.effect === 'tolerated' && rule.b.by !== 'any');
}

function namesBoth({ a, b }: PairRule): boolean {
  return Math.min(narrowness(a), narrowness(b)) >= NAMED;
}

/** The surest ally entry of either side about the other. */
function allyOf(one: CoralEntry, other: CoralEntry): Ally | undefined {
  const order = ['good', 'usual', 'uncertain'];
  return [
    ...one.sting.allies.filter(({ who }) => selects(who, other)),
    ...other.sting.allies.filter(({ who }) => selects(who, one)),
  ].sort((a, b) => order.indexOf(a.confidence) - order.indexOf(b.confidence))[0];
}
