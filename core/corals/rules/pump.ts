import { basisWords } from '../basis-words.ts';
import type { Bases } from '../basis.ts';
import type { Finding, Placed } from '../scene.ts';

const guardBasis: Bases = [{ kind: 'practice', note: 'foam or mesh on every intake' }];

/** Anemones and pumps: whether the intakes are guarded is not known here, so it is always said. */
export function pumpFindings({ id, entry, label }: Placed): readonly Finding[] {
  if (entry.group !== 'anemone' || entry.moves.value === 'stays') return [];
  const walks = entry.moves.value === 'walks';
  return [
    {
      rule: 'pump',
      verdict: 'watch',
      corals: [id],
      reason: `${label}: ${walks ? 'walks' : 'may move'}, and a pump intake kills it. The pieces foul the whole tank.`,
      basis: basisWords(entry.moves.basis, guardBasis),
      cure: 'Guard every pump intake with foam or mesh, and clean the guards.',
      weight: walks ? 28 : 14,
    },
  ];
}
