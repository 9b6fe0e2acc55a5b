import { basisWords } from '../basis-words.ts';
import { palytoxinCaution } from '../cautions.ts';
import type { Finding, Placed } from '../scene.ts';

/** Harm to people. A caution, no fault of the spot: settled, and first among what is settled. */
export function peopleFindings({ id, entry, label }: Placed): readonly Finding[] {
  if (entry.hazard === undefined) return [];
  const { palytoxin, notes } = entry.hazard;
  const statements = palytoxin ? [palytoxinCaution, ...notes] : notes;
  if (statements.length === 0) return [];
  return [
    {
      rule: 'people',
      verdict: 'settled',
      corals: [id],
      reason: `${label}: ${statements.map(({ text }) => text).join('. ')}.`,
      basis: basisWords(...statements.map(({ basis }) => basis)),
      weight: palytoxin ? 100 : 50,
    },
  ];
}
