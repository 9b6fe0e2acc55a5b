import { basisName } from '../../core/corals/basis-words.ts';
import type { NamedCoral } from '../../core/corals/named.ts';
import { FLOW_LOOK, flowWords } from '../../core/corals/rules/flow.ts';
import { cm } from '../../core/corals/say.ts';
import { answer, type Answer } from '../answer.ts';

/** A new coral that stays shut; `water` is what its readings say, where they are fine. Leave it, look, and ask. */
export function newShutAnswer(named: NamedCoral, water: Answer | undefined): Answer {
  const [entry] = named.entries;
  const name = entry.names.common[0];
  const { light, flow } = entry;
  return answer({
    headline: 'Leave it alone first: a new piece often takes days to two weeks to open.',
    read: [
      `${named.name} as ${name}${named.entries.length > 1 ? ' or its near kin' : ''}, new and shut`,
      ...(water?.read ?? []),
    ],
    facts: [
      ...(water === undefined ? [] : [{ label: 'water', value: water.headline }]),
      {
        label: `light for ${name}`,
        value: `begin near ${light.startPpfd} of ${light.lowPpfd} to ${light.highPpfd} PAR (${basisName(light.basis)})`,
      },
      {
        label: `flow for ${name}`,
        value: `${flowWords(entry)}, indirect: ${FLOW_LOOK} (${basisName(flow.basis)})`,
      },
      ...(water?.facts ?? []),
    ],
    steps: [
      'Change nothing and do not poke it: gentle, indirect flow, no more light than it begins at, and wait.',
      'Tonight look with a dim torch for flatworms and other pests on it, and for a neighbour that reaches it.',
      `Tell us: a photo, PAR and flow, what stands within ${cm(15)}, how it was acclimatised and dipped.`,
      'Confirm salinity with an instrument checked against a standard fluid, for everything else hangs on it.',
      ...(water?.steps ?? []),
    ],
    working: water?.working ?? [],
    dangers: [
      'Flesh drawn back from the skeleton, or brown jelly: take it out into a box of its own the same day, and ask.',
      ...(water?.dangers ?? []),
    ],
    cautions: water?.cautions ?? [],
    sources: ['practice', ...(water?.sources ?? [])],
  });
}
