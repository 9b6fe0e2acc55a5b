import type { Answer } from '../answer.ts';

type Remarked = Pick<Answer, 'steps' | 'dangers' | 'cautions'>;

/** What a question about a dose gives away besides its numbers, and the sentence that answers it. */
const remarks = {
  'dosing stopped': {
    steps: [
      'Start your usual dosing again today.',
      'Next time measure the use without stopping: test, keep dosing, test again, add what was dosed (/dose use).',
    ],
  },
  'at once': { dangers: ['Not all at once, and never as dry powder into the tank.'] },
  'amount of another': {
    cautions: [
      'Somebody else’s amount belongs to their volume and their powder, teaspoons most of all. Do not copy it; weigh your own.',
    ],
  },
  'calcium reactor': {
    steps: [
      'Refit the gas and check the effluent.',
      'Leave the daily dose off again once the reactor works: both together dose twice.',
    ],
  },
  vinegar: {
    dangers: ['Never pour acid into the tank to bring alkalinity down.'],
    cautions: [
      'Vinegar lets a little more lime dissolve and adds organic carbon, which feeds bacteria; it is optional.',
    ],
  },
} as const satisfies Readonly<Record<string, Partial<Remarked>>>;
export type Remark = keyof typeof remarks;

/** The answer with what else was said of the dose before its own steps and cautions, what can hurt behind its own. */
export function remarked(given: Answer, said: readonly Remark[]): Answer {
  const found = said.map((one): Partial<Remarked> => remarks[one]);
  return {
    ...given,
    steps: [...found.flatMap(({ steps = [] }) => steps), ...given.steps],
    dangers: [...given.dangers, ...found.flatMap(({ dangers = [] }) => dangers)],
    cautions: [...found.flatMap(({ cautions = [] }) => cautions), ...given.cautions],
  };
}
