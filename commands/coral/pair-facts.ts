import { basisName } from '../../core/corals/basis-words.ts';
import type { CoralEntry } from '../../core/corals/entry.ts';
import type { PairRoom } from '../../core/corals/pair-room.ts';
import type { PairNeed } from '../../core/corals/reach.ts';
import { cm, cmRange } from '../../core/corals/say.ts';
import type { Fact } from '../answer.ts';
import type { Pair } from './pair-worst.ts';

/** That one of them grows over the other. */
export function spreadFact({ names, growth }: CoralEntry): Fact {
  const { lowCmPerYear, highCmPerYear, basis } = growth;
  return {
    label: 'spreads',
    value: `${names.common[0]}, ${lowCmPerYear} to ${highCmPerYear} cm a year (${basisName(basis)}), over its neighbours (common practice)`,
  };
}

/** Soft beside stony, where that holds. */
export function chemistryFacts({ softBesideStony }: PairRoom): readonly Fact[] {
  if (softBesideStony === undefined) return [];
  const { gapCm, effectBasis } = softBesideStony.rule;
  return [
    {
      label: 'soft beside stony',
      value: `most within ${gapCm} cm harmed each other; who wins is disputed (${basisName(effectBasis)})`,
    },
  ];
}

export function roomFact({ room: { need }, moveBelowCm, watchBelowCm }: Pair): Fact {
  const [rule] = need.facts.rules;
  const own = rule === undefined ? 'from their reach' : basisName(rule.rule.gapBasis);
  const basis = watchBelowCm > need.watchBelowCm ? 'project rule' : own;
  return {
    label: 'room between them',
    value: `${moveBelowCm > 0 ? `move below ${cm(moveBelowCm)}, ` : ''}watch below ${cm(watchBelowCm)} (${basis})`,
  };
}

export function reachFact({ names, sting }: CoralEntry): Fact {
  const { reachLowCm, reachHighCm, reachBasis, when } = sting;
  return {
    label: `reach of ${names.common[0]}`,
    value: `${cmRange(reachLowCm, reachHighCm)} at full stretch (${basisName(reachBasis)}), ${when === 'both' ? 'day and night' : `mostly by ${when}`}`,
  };
}

export function knownFacts({ facts }: PairNeed): readonly Fact[] {
  return [
    ...facts.rules.map(({ rule }) => ({
      label: 'what is known',
      value: `${rule.effect} (${basisName(rule.effectBasis)})${rule.note === undefined ? '' : `: ${rule.note}`}`,
    })),
    ...(facts.ally === undefined
      ? []
      : [
          {
            label: 'lives beside',
            value: `${facts.ally.text}, ${facts.ally.confidence} (${basisName(facts.ally.basis)})`,
          },
        ]),
    ...(facts.disagree ? [{ label: 'sources differ', value: 'the stronger warning is kept' }] : []),
  ];
}

export function gapBasis({ facts }: PairNeed): readonly string[] {
  return facts.rules.map(({ rule }) => `The gap of ${cm(rule.gapCm)} rests on: ${basisName(rule.gapBasis)}`);
}
