import type { CoralEntry } from '../../core/corals/entry.ts';
import type { NamedCoral } from '../../core/corals/named.ts';
import { answer, type Answer } from '../answer.ts';
import { growthLine, lightLine, sizeLine, widthText } from './about-lines.ts';
import { fullName } from './asked-kind.ts';

/** Forms that spread over what stands below them. */
const SPREADS: ReadonlySet<string> = new Set([
  'table',
  'plating',
  'branching',
  'tree',
  'stalked',
  'rods or fans',
]);

/** Whether the first grows over the light of the second. */
export function shadeAnswer(over: NamedCoral, under: NamedCoral): Answer {
  const [upper, lower] = [over.entries[0], under.entries[0]];
  const [name, below] = [upper.names.common[0], lower.names.common[0]];
  const lines = [sizeLine(upper), growthLine(upper)];
  return answer({
    headline: spreads(upper)
      ? `In time, yes, what lies under it: ${name} grows ${widthText(upper.size)}. Set ${below} beside it, clear of that width, not below.`
      : `Hardly by its shape: ${name} does not spread over its neighbours. What stands straight under any coral still gets less light.`,
    read: [`${over.name} as ${fullName(upper)}, above ${under.name} as ${fullName(lower)}`],
    facts: [
      ...lines.map((fact) => ({ ...fact, label: `${fact.label} of ${name}` })),
      { ...lightLine(lower), label: `light for ${below}` },
    ],
    steps: [
      `Measure PAR where ${below} stands now and again in some months: below its range it has to move, or the one above is cut back.`,
      'Shade is no harm at once: a piece that lives in it only grows slower and browner, so there is time.',
      'Move it back into the light step by step, never from deep shade straight under the lamp.',
    ],
    cautions: ['Whether the two may touch is another question: ask "can they sit next to each other".'],
    sources: ['practice', 'memory'],
  });
}
function spreads({ form }: CoralEntry): boolean {
  return form.kinds.some((kind) => SPREADS.has(kind));
}
