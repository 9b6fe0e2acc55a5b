import { answer, type Answer } from '../answer.ts';

/** What is dosed by the label of a product; a medicine is named so that it can be refused. */
export const labelled = [
  'carbon source',
  'phosphate remover',
  'iodine or traces',
  'amino acids',
  'salt or buffer',
  'medicine',
] as const;
export type Labelled = (typeof labelled)[number];

/** What acts by its strength, its maker or the bacteria of the tank: no sum gives an amount, and none is made up. */
export function byLabelAdvice(what: Labelled): Answer {
  return answer({
    headline: `I work out no amount of ${what === 'carbon source' ? 'a carbon source' : 'that'}: it hangs on product and tank. Follow its label and begin well below it.`,
    steps: STEPS[what],
    dangers: DANGERS[what],
    cautions: what === 'salt or buffer' ? BUFFER_CAUTIONS : [],
    sources: ['practice'],
  });
}

const TEST_FIRST =
  'Test nitrate and phosphate first, twice, with fresh reagents: a tank near zero needs none of this.';
const WITHOUT_IT =
  'Less food, a cleaner sump and water changes bring both down without it (/waterchange goal).';

const PART = [
  'Start with a part of what the label says, and test every two or three days.',
  'Take it out or stop as soon as the level is where you want it.',
] as const;

const STEPS: Readonly<Record<Labelled, readonly string[]>> = {
  'carbon source': [
    TEST_FIRST,
    'Raise it only in small steps, weeks apart, with the skimmer running and strong surface flow.',
    'Stop when the water clouds, slime grows or fish breathe fast.',
    WITHOUT_IT,
  ],
  'salt or buffer': [
    'Test what it raises before and after, and stop where the level is where you want it.',
    'A pure salt of a known name has a sum of its own: /dose amount.',
  ],
  'phosphate remover': [TEST_FIRST, ...PART, WITHOUT_IT],
  'iodine or traces': [
    'Test for it first, with a kit for sea water or in a laboratory: water changes often bring enough.',
    ...PART,
  ],
  'amino acids': [
    'They feed all that lives in the tank: test nitrate and phosphate before and every week.',
    'Start with a part of what the label says, and stop where the water clouds or algae grow.',
  ],
  medicine: [],
};

const DANGERS: Readonly<Record<Labelled, readonly string[]>> = {
  'carbon source': [
    'Carbon feeds bacteria that use up oxygen: too much suffocates fish, worst at night. Vinegar lowers pH too.',
  ],
  'phosphate remover': ['Phosphate that falls fast pales and kills corals.'],
  'iodine or traces': ['Iodine is poisonous in small amounts: dose it only against a test.'],
  'amino acids': ['Too much at once takes up oxygen as it rots: strong surface flow, and never at night.'],
  'salt or buffer': [],
  medicine: [],
};

const BUFFER_CAUTIONS = [
  'Buffers sold for pH raise alkalinity. Never two products for one thing on the same day, and keep the calcium and the alkalinity part well apart.',
] as const;
