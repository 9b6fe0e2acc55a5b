import { basisWords } from '../basis-words.ts';
import type { Finding, Placed } from '../scene.ts';

/** Legal notes of an entry; no legal advice, local rules come first. */
export function lawFindings({ id, entry, label }: Placed): readonly Finding[] {
  const { cites, citesBasis, notes } = entry.law;
  const listed = cites === 'II' ? 'listed in CITES Appendix II' : undefined;
  if (listed === undefined && notes.length === 0) return [];
  const sentences = [...(listed === undefined ? [] : [listed]), ...notes.map(({ text }) => text)];
  return [
    {
      rule: 'law',
      verdict: 'settled',
      corals: [id],
      reason: `${label}: ${sentences.join('. ')}. Local rules come first; no legal advice.`,
      basis: basisWords(...(listed === undefined ? [] : [citesBasis]), ...notes.map(({ basis }) => basis)),
      weight: notes.length > 0 ? 3 : 1,
    },
  ];
}
