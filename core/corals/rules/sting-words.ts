import { publishedRankings } from '../aggression.ts';
import { basisName, basisWords, cited } from '../basis-words.ts';
import type { Bases } from '../basis.ts';
import type { CoralEntry } from '../entry.ts';
import { ALLY_GAP_CM, type PairFacts } from '../pair-facts.ts';
import type { PairEffect } from '../pair-rules.ts';
import type { AppliedRule } from '../pairs.ts';
import { cm, cmRange } from '../say.ts';
import type { Placed } from '../scene.ts';
import { selects } from '../selector.ts';
import { stingReach } from '../sting-reach.ts';
import { isCarried, type StandingPair } from './pair.ts';

const effectWords: Readonly<Record<PairEffect, string>> = {
  tolerated: 'These two tolerate each other',
  'usually tolerated': 'These two usually tolerate each other',
  'stand-off': 'Each holds the other off',
  uncertain: 'Some of these get on and some do not',
  watch: 'One may harm the other',
  'keep apart': 'These two are kept apart',
  'never close': 'These two never stand close',
};
const carriedBasis: Bases = [{ kind: 'project rule', note: 'reach counts 1.5 times downstream' }];
const allyBasis: Bases = [{ kind: 'project rule', note: `${ALLY_GAP_CM} cm between allies` }];
const roughBasis: Bases = [{ kind: 'project rule', note: 'a spot in words is good to a sixth of the tank' }];
const reachBasis: Bases = [{ kind: 'project rule', note: 'gap against reach at full stretch' }];

/** How far apart, what is known of the pair, how far each side reaches, and who ranks above whom. */
export function stingReason(pair: StandingPair, victim: Placed, attacker: Placed): string {
  return (
    [
      distanceWords(pair),
      ...factWords(pair.need.facts),
      ...reachWords(pair, attacker),
      ...(reachesAcross(pair, victim) ? reachWords(pair, victim) : []),
      ...rankingWords(attacker, victim),
    ].join('. ') + '.'
  );
}

function distanceWords({ one, other, gap }: StandingPair): string {
  const names = `${one.label} and ${other.label}`;
  if (gap.rough) {
    return `${names} stand about ${cm(gap.cm)} apart (${cmRange(gap.lowCm, gap.highCm)}). A spot is in words`;
  }
  return gap.cm === 0 ? `${names} touch` : `${names} stand ${cm(gap.cm)} apart, edge to edge`;
}

/** The facts of a pair of kinds never change, so their sentences are made once. */
const factSentences = new WeakMap<PairFacts, readonly string[]>();

function factWords(facts: PairFacts): readonly string[] {
  const kept = factSentences.get(facts);
  if (kept !== undefined) return kept;
  const { rules, ally, disagree } = facts;
  const sentences = [
    ...rules.map(ruleWords),
    ...(ally === undefined
      ? []
      : [`Known to live beside: ${ally.text}, ${ally.confidence} (${basisName(ally.basis)})`]),
    ...(disagree ? ['The sources differ; the stronger warning is kept as something to watch'] : []),
  ];
  factSentences.set(facts, sentences);
  return sentences;
}

function ruleWords({ rule }: AppliedRule): string {
  const gap = rule.gapCm === 0 ? 'they may touch' : `keep ${cm(rule.gapCm)}`;
  const note = rule.note === undefined ? '' : `. ${rule.note}`;
  return `${effectWords[rule.effect]} (${basisName(rule.effectBasis)}): ${gap} (${basisName(rule.gapBasis)})${note}`;
}

/** Whether a coral's own sting can cross the gap. */
function reachesAcross({ one, gap, oneFactor, otherFactor }: StandingPair, coral: Placed): boolean {
  return stingReach(coral.entry).highCm * (coral === one ? oneFactor : otherFactor) > gap.lowCm;
}

function reachWords({ one, oneFactor, otherFactor }: StandingPair, coral: Placed): readonly string[] {
  const own = stingReach(coral.entry);
  if (own.highCm === 0) return [];
  const factor = coral === one ? oneFactor : otherFactor;
  const { sting } = coral.entry;
  const night = sting.when === 'night' || sting.weapons.includes('sweepers') ? ', most of it at night' : '';
  const along =
    factor > 1
      ? `, counted as ${cmRange(own.lowCm * factor, own.highCm * factor)} downstream (project rule)`
      : '';
  return [
    `Reach of ${coral.label} at full stretch: ${cmRange(own.lowCm, own.highCm)} (${basisName(sting.reachBasis)})${night}${along}`,
  ];
}

/** Published rankings that put these two on opposite ends, either way round: disagreements are told. */
function rankingWords(attacker: Placed, victim: Placed): readonly string[] {
  const agree = ranksAbove(attacker.entry, victim.entry);
  const against = ranksAbove(victim.entry, attacker.entry);
  return [
    ...(agree.length > 0 ? [`${attacker.label} rank above ${victim.label} in ${agree.join(', ')}`] : []),
    ...(against.length > 0 ? [`${victim.label} rank above ${attacker.label} in ${against.join(', ')}`] : []),
  ];
}

/** The papers that name the first among the strong and the other among the weak. */
function ranksAbove(one: CoralEntry, other: CoralEntry): readonly string[] {
  return publishedRankings
    .filter(({ strong, weak }) => {
      const above = strong.who.some((who) => selects(who, one));
      return above && weak?.who.some((who) => selects(who, other)) === true;
    })
    .map(({ source }) => cited(source));
}

export function stingBasis(pair: StandingPair): string {
  const { rules, ally } = pair.need.facts;
  const [a, b] = [pair.one.entry.sting, pair.other.entry.sting];
  return basisWords(
    ...rules.flatMap(({ rule }) => [rule.effectBasis, rule.gapBasis]),
    ...(ally === undefined ? [] : [ally.basis, ...(rules.length === 0 ? [allyBasis] : [])]),
    ...(isCarried(pair) ? [carriedBasis] : []),
    ...(pair.gap.rough ? [roughBasis] : []),
    ...(rules.length === 0 && ally === undefined ? [a.reachBasis, b.reachBasis, reachBasis] : []),
  );
}
