import { basisName } from '../../../core/corals/basis-words.ts';
import type { CoralEntry } from '../../../core/corals/entry.ts';
import type { PairRoom } from '../../../core/corals/pair-room.ts';
import type { Fact } from '../../answer.ts';

/** That one of them grows over the other. */
export function spreadFact({ names, growth }: CoralEntry): Fact {
  const { lowCmPerYear, highCmPerYear, basis } = growth;
  return {
    label: 'spreads',
    value: `${names.common[0]}, ${lowCmPerYear} to ${highCmPerYear} cm a year (${basisName(basis)}); it wins by growing over, not by stinging (common practice)`,
  };
}

/** Soft beside stony, where that holds. */
export function chemistryFacts({ softBesideStony }: PairRoom): readonly Fact[] {
  if (softBesideStony === undefined) return [];
  const { gapCm, effectBasis } = softBesideStony.rule;
  return [
    {
      label: 'soft beside stony',
      value: `within ${gapCm} cm most such neighbours harmed each other; who wins is disputed (${basisName(effectBasis)})`,
    },
  ];
}
