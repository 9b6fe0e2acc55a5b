import { basisWords } from '../basis-words.ts';
import type { CoralEntry } from '../entry.ts';
import type { Finding, Placed } from '../scene.ts';

/** How the right flow looks: common practice. */
export const FLOW_LOOK = 'soft flesh moves gently and is never pressed flat';

/** The flow at a spot is not known, so nothing is judged: what the coral wants and how to see it. */
export function flowFindings({ id, entry, label }: Placed): readonly Finding[] {
  const { note, basis } = entry.flow;
  const more = note === undefined ? '' : ` ${note.text}.`;
  return [
    {
      rule: 'flow',
      verdict: 'settled',
      corals: [id],
      reason: `Flow for ${label}: ${flowWords(entry)}. I do not know the flow at its spot: ${FLOW_LOOK}.${more}`,
      basis: basisWords(basis, [{ kind: 'practice' }], ...(note === undefined ? [] : [note.basis])),
      weight: 2,
    },
  ];
}

/** "low to medium". */
export function flowWords({ flow }: CoralEntry): string {
  return flow.min === flow.max ? flow.min : `${flow.min} to ${flow.max}`;
}
