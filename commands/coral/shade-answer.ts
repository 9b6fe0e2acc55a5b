import type { CoralEntry } from '../../core/corals/entry.ts';
import type { NamedCoral } from '../../core/corals/named.ts';
import { answer, type Answer } from '../answer.ts';
import { cm } from '../../core/corals/say.ts';
import { growthLine, lightLine, sizeLine } from './about-lines.ts';
import { shortFirst } from './short-first.ts';
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
  return answer({
    headline: spreads(upper)
      ? `In time, yes: ${name} grows to some ${cm(upper.size.practicalMaxCm)} wide. Set ${below} beside it, not below.`
      : `Hardly: ${name} does not spread over its neighbours. Straight under any coral there is still less light.`,
    read: [`${over.name} as ${fullName(upper)}, above ${under.name} as ${fullName(lower)}`],
    facts: shortFirst([
      { ...lightLine(lower), label: `light for ${below}` },
      { ...sizeLine(upper), label: `size of ${name}` },
    ]),
    steps: [
      `Measure PAR where ${below} stands now and in some months: below its range move it or cut back above.`,
      'Move it back into the light step by step, never from deep shade straight under the lamp.',
    ],
    cautions: [
      'Shade is no harm at once: a piece that lives in it only grows slower and browner, so there is time.',
      'Whether the two may touch is another question: ask "can they sit next to each other".',
    ],
    working: [`growth of ${name}: ${growthLine(upper).value}`],
    sources: ['practice', 'memory'],
  });
}
function spreads({ form }: CoralEntry): boolean {
  return form.kinds.some((kind) => SPREADS.has(kind));
}
