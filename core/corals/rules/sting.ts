import type { Potency } from '../entry.ts';
import { cm, missingCm } from '../say.ts';
import type { Finding, Placed, Verdict } from '../scene.ts';
import type { StandingPair } from './pair.ts';
import { stingReach } from '../sting-reach.ts';
import { stingBasis, stingReason } from './sting-words.ts';

const strength: Readonly<Record<Potency, number>> = { none: 0, mild: 1, moderate: 2, strong: 3, severe: 4 };

/** Allies this near are named as such, cm: project rule. */
const NEAR_CM = 10;

/** Each side on the other. Below the least gap: move; within reach, or perhaps so: watch; near a known ally: settled. */
export function stingFinding(pair: StandingPair): Finding | undefined {
  const verdict = stingVerdict(pair);
  if (verdict === undefined) return undefined;
  const { gap, need } = pair;
  const [victim, attacker] = atRiskFirst(pair);
  const goalCm = verdict === 'move' ? need.moveBelowCm : need.watchBelowCm;
  return {
    rule: 'sting',
    verdict,
    corals: [victim.id, attacker.id],
    reason: stingReason(pair, victim, attacker),
    basis: stingBasis(pair),
    ...(verdict === 'settled' ? {} : { cure: cureWords(pair, verdict, goalCm, attacker), apartCm: goalCm }),
    weight: weightOf(pair, verdict, attacker, Math.max(0, goalCm - gap.cm)),
  };
}

/** A spot in words asks for a measured gap where half its error would bring the two within the least gap. */
function stingVerdict({ gap, need }: StandingPair): Verdict | undefined {
  if (gap.cm < need.moveBelowCm) return 'move';
  if (gap.cm < need.watchBelowCm) return 'watch';
  if (gap.rough && (gap.lowCm + gap.cm) / 2 < need.moveBelowCm) return 'watch';
  if (gap.cm >= NEAR_CM || need.moveBelowCm > 0) return undefined;
  const { ally, rules } = need.facts;
  return ally !== undefined || rules.some(({ rule }) => rule.effect === 'tolerated') ? 'settled' : undefined;
}

/** Out of reach in still water, so only the flow may carry it there: after all that is near. */
function weightOf(pair: StandingPair, verdict: Verdict, attacker: Placed, missing: number): number {
  const { one, other, gap } = pair;
  const isFar = gap.lowCm >= Math.max(stingReach(one.entry).highCm, stingReach(other.entry).highCm);
  const base = { settled: 0, watch: isFar ? -10 : 20, move: 60 }[verdict];
  return base + 6 * strength[attacker.entry.sting.potency] + Math.min(15, missing / 2);
}

/** The side that is harmed by the deciding rule, else the one with the weaker sting, else with the shorter reach. */
function atRiskFirst({ one, other, need }: StandingPair): readonly [Placed, Placed] {
  const { aggressor } = need.facts;
  if (one.entry !== other.entry) {
    if (aggressor === one.entry) return [other, one];
    if (aggressor === other.entry) return [one, other];
  }
  const [a, b] = [one.entry.sting, other.entry.sting];
  const stronger = strength[a.potency] - strength[b.potency] || a.reachHighCm - b.reachHighCm;
  return stronger > 0 ? [other, one] : [one, other];
}

function cureWords({ gap }: StandingPair, verdict: Verdict, goalCm: number, attacker: Placed): string {
  if (gap.cm >= goalCm) return 'Give both spots in cm, or measure the gap, to be sure.';
  const further = `${missingCm(goalCm - gap.cm)} further apart: at least to ${cm(goalCm)}`;
  return verdict === 'move'
    ? `${further}.`
    : `Look at night with a dim torch. If ${attacker.label} can touch: ${further}.`;
}
