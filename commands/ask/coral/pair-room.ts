import { basisName } from '../../../core/corals/basis-words.ts';
import type { CoralEntry } from '../../../core/corals/entry.ts';
import { isChemistry } from '../../../core/corals/pair-facts.ts';
import { pairRulesFor } from '../../../core/corals/pairs.ts';
import type { PairNeed } from '../../../core/corals/reach.ts';
import type { Fact } from '../../answer.ts';

/** Bare ground round a mat that creeps, and between polyps that spread, cm: common practice. */
export const CLEAR_OF_MAT_CM = 10;
const CLEAR_OF_POLYPS_CM = 5;

/** The room two corals want for every reason known: stings, chemicals and growing over. */
export interface PairRoom {
  readonly moveBelowCm: number;
  readonly watchBelowCm: number;
  /** The one of them that wins by growing over the other. */
  readonly spreads?: CoralEntry | undefined;
  readonly facts: readonly Fact[];
}

export function pairRoom(one: CoralEntry, other: CoralEntry, need: PairNeed): PairRoom {
  const soft = [one, other].find(({ tags }) => tags.includes('fleshy soft coral'));
  const chemistry = soft === undefined ? undefined : pairRulesFor(one, other).find(isChemistry)?.rule;
  const spreads = one === other ? undefined : spreading(one, other);
  const clearCm = spreads === undefined ? 0 : isMat(spreads) ? CLEAR_OF_MAT_CM : CLEAR_OF_POLYPS_CM;
  const chemistryCm = chemistry?.gapCm ?? 0;
  const isChemical = soft?.sting.weapons.includes('chemical') === true;
  return {
    moveBelowCm: Math.max(need.moveBelowCm, isChemical ? chemistryCm : 0),
    watchBelowCm: Math.max(need.watchBelowCm, chemistryCm, clearCm),
    spreads,
    facts: [
      ...(spreads === undefined ? [] : [spreadFact(spreads)]),
      ...(chemistry === undefined
        ? []
        : [
            {
              label: 'soft beside stony',
              value: `within ${chemistry.gapCm} cm most such neighbours harmed each other; who wins is disputed (${basisName(chemistry.effectBasis)})`,
            },
          ]),
    ],
  };
}

/** Whether it is a soft mat: those win over polyps too. */
export function isMat({ group }: CoralEntry): boolean {
  return group === 'soft';
}

function spreading(one: CoralEntry, other: CoralEntry): CoralEntry | undefined {
  const [first] = [one, other]
    .filter(({ sting }) => sting.weapons.includes('overgrowth'))
    .sort((a, b) => Number(isMat(b)) - Number(isMat(a)) || b.growth.highCmPerYear - a.growth.highCmPerYear);
  return first;
}

function spreadFact({ names, growth }: CoralEntry): Fact {
  const { lowCmPerYear, highCmPerYear, basis } = growth;
  return {
    label: 'spreads',
    value: `${names.common[0]}, ${lowCmPerYear} to ${highCmPerYear} cm a year (${basisName(basis)}); it wins by growing over, not by stinging (common practice)`,
  };
}
