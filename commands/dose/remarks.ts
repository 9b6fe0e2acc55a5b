import type { Answer } from '../answer.ts';

/** What a question about a dose gives away besides its numbers, and the sentence that answers it. */
const remarks = {
  'dosing stopped': {
    steps: [
      'Start your usual dosing again today. Next time measure the daily use without stopping it: test, keep dosing, test again, add what was dosed to the change (/dose use).',
    ],
    cautions: [],
  },
  'at once': { steps: [], cautions: ['Not all at once, and never as dry powder into the tank.'] },
  'amount of another': {
    steps: [],
    cautions: [
      'Somebody else’s amount belongs to their volume and their powder, teaspoons most of all. Do not copy it; weigh your own.',
    ],
  },
  'calcium reactor': {
    steps: [
      'Refit the gas, check the effluent, and leave the daily dose off again once the reactor works: both together dose twice.',
    ],
    cautions: [],
  },
  vinegar: {
    steps: [],
    cautions: [
      'Vinegar lets a little more lime dissolve and adds organic carbon, which feeds bacteria; it is optional. Never pour acid into the tank to bring alkalinity down.',
    ],
  },
} as const satisfies Readonly<Record<string, Pick<Answer, 'steps' | 'cautions'>>>;
export type Remark = keyof typeof remarks;

/** The answer with what else was said of the dose before its own steps and cautions. */
export function remarked(given: Answer, said: readonly Remark[]): Answer {
  const found = said.map((one): Pick<Answer, 'steps' | 'cautions'> => remarks[one]);
  return {
    ...given,
    steps: [...found.flatMap(({ steps }) => steps), ...given.steps],
    cautions: [...found.flatMap(({ cautions }) => cautions), ...given.cautions],
  };
}
