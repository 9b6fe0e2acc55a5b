import { basisName } from '../../../core/corals/basis-words.ts';
import { FLOW_LOOK, flowWords } from '../../../core/corals/rules/flow.ts';
import { coralsIn } from '../../../core/words/corals.ts';
import { answer, type Answer } from '../../answer.ts';
import type { OwnContext } from '../../command.ts';
import type { Heard } from '../../../core/words/hear.ts';
import { says, type Intent } from '../intent.ts';
import { readingIntent } from '../readings.ts';
import { cmAndInches } from '../../../core/corals/say.ts';

const SHUT = [
  '(?:stays?|staying|still|is|are|all|keeps?) (?:pulled in|closed|shut|retracted|tight|in)',
  'pulled in',
  "(?:not|isnt|isn't|wont|won't|never|doesnt|doesn't) (?:be )?open(?:ing|ed)?(?: up)?",
  'retracted',
  'closed up',
] as const;
const NEW = [
  'new',
  'got',
  'bought',
  'added',
  'received',
  'picked up',
  'arrived',
  'came',
  'introduced',
  'placed',
] as const;

/** A new coral that stays shut in water that reads well: leave it, look, and ask; nothing is ordered. */
export const shutIntent: Intent = (heard, context) => {
  if (!says(heard, ...SHUT) || !says(heard, ...NEW)) return undefined;
  const [named] = coralsIn(heard.text);
  if (named === undefined) return undefined;
  const [entry] = named.entries;
  const name = entry.names.common[0];
  const water = waterOf(heard, context);
  if (water?.facts.some(({ verdict }) => verdict !== undefined && verdict !== 'fine')) return undefined;
  const { light, flow } = entry;
  return answer({
    headline: `Leave it alone first: a new piece often takes days to two weeks to open.${water === undefined ? '' : ` Water: ${lower(water.headline)}`}`,
    read: [
      `${named.name} as ${name}${named.entries.length > 1 ? ' or its near kin' : ''}, new and shut`,
      ...(water?.read ?? []),
    ],
    facts: [
      ...(water?.facts ?? []),
      {
        label: `light for ${name}`,
        value: `begin near ${light.startPpfd} of ${light.lowPpfd} to ${light.highPpfd} PAR (${basisName(light.basis)})`,
      },
      {
        label: `flow for ${name}`,
        value: `${flowWords(entry)}, indirect: ${FLOW_LOOK} (${basisName(flow.basis)})`,
      },
    ],
    steps: [
      'First step: change nothing and do not poke it; give it gentle, indirect flow and no more light than it begins at, and wait.',
      'Tonight look with a dim torch for flatworms and other pests on it, and for a neighbour that reaches it.',
      `Tell us: a photo, PAR and flow at its spot, what stands within ${cmAndInches(15)}, how it was acclimatised, whether it was dipped.`,
      'Confirm salinity with an instrument checked against a standard fluid, for everything else hangs on it.',
      ...(water?.steps ?? []),
    ],
    working: water?.working ?? [],
    cautions: [
      'Act the same day when flesh draws back from the skeleton or brown jelly shows: take it out into a box of its own, and ask with a photo.',
      ...(water?.cautions ?? []),
    ],
    sources: ['practice', ...(water?.sources ?? [])],
  });
};

/** What the readings in the sentence say, where there are any. */
function waterOf(heard: Heard, context: OwnContext): Answer | undefined {
  return heard.said.length === 0 ? undefined : readingIntent(heard, context);
}

function lower(text: string): string {
  return text.replace(/^[A-Z](?=[a-z])/, (letter) => letter.toLowerCase());
}
