import { basisWords } from '../basis-words.ts';
import { isChemistry } from '../pair-facts.ts';
import { pairRulesFor } from '../pairs.ts';
import { cm, missingCm } from '../say.ts';
import type { Finding, Verdict } from '../scene.ts';
import type { StandingPair } from './pair.ts';

/** What helps besides room: common practice. */
export const CARBON = 'Run activated carbon and change it often.';

/**
 * Soft beside stony: within 10 cm most corals were interacting to the harm of one or both (Griffith 1997). In contact the
 * soft side usually loses (Dai 1990), yet soft corals overgrow stony ones too (Griffith 1997): both are told.
 */
export function chemistryFinding({ one, other, gap }: StandingPair): Finding | undefined {
  const soft = [one, other].find(({ entry }) => entry.tags.includes('fleshy soft coral'));
  if (soft === undefined || gap.cm >= FARTHEST_CM) return undefined;
  const applied = pairRulesFor(one.entry, other.entry).find(isChemistry);
  if (applied === undefined) return undefined;
  const stony = soft === one ? other : one;
  const { gapCm } = applied.rule;
  const verdict = chemistryVerdict(gap.cm, gapCm, soft.entry.sting.weapons.includes('chemical'));
  if (verdict === undefined) return undefined;
  const about = gap.rough ? 'about ' : '';
  return {
    rule: 'chemistry',
    verdict,
    corals: [stony.id, soft.id],
    reason:
      `${soft.label} (soft) and ${stony.label} (stony): ${gap.cm === 0 ? 'touching' : `${about}${cm(gap.cm)} apart`}. Within 10 cm most such ` +
      'neighbours harmed each other, by chemicals or overgrowth; in contact the soft side usually loses, so the ' +
      'sources differ on who wins.',
    basis: basisWords(applied.rule.effectBasis, applied.rule.gapBasis),
    cure: `${missingCm(gapCm - gap.cm)} further apart: at least to ${cm(gapCm)}. ${CARBON}`,
    apartCm: gapCm,
    weight: verdict === 'move' ? 55 + (gapCm - gap.cm) : 22 + (gapCm - gap.cm),
  };
}

/** No rule asks for more. */
const FARTHEST_CM = 10;

/** In the zone of harm: move for those known for chemicals or in contact; watch for the rest, which spread instead. */
function chemistryVerdict(gapCm: number, needCm: number, chemical: boolean): Verdict | undefined {
  if (gapCm >= needCm) return undefined;
  return chemical || gapCm < CONTACT_CM ? 'move' : 'watch';
}

/** So near that polyps and edges meet, cm: project rule. */
const CONTACT_CM = 2;
