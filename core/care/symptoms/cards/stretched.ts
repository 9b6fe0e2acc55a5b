import { readIn } from '../../../corals/basis-words.ts';
import type { SymptomCard } from '../card.ts';

export const stretched: SymptomCard = {
  group: 'shape',
  label: 'Stretched much longer than usual',
  causes: {
    dim: { name: 'reaching for light', why: 'the usual cause', signs: ['dim'] },
    hungry: { name: 'hungry', why: 'tentacles out for food', signs: ['zero'] },
    flow: { name: 'little flow', why: 'nothing holds it short' },
    sweepers: {
      name: 'sweepers forming beside a neighbour',
      why: 'long thin tentacles with pale tips',
      signs: ['sting'],
    },
  },
  questions: [
    {
      ask: 'What is long?',
      choices: {
        all: { label: 'the whole coral, to the lamp', up: ['dim'], because: 'it leans to the lamp' },
        few: { label: 'a few thin tentacles', up: ['sweepers'], because: 'a few thin ones are sweepers' },
        night: { label: 'only at night', up: ['hungry'], because: 'at night they fish' },
      },
    },
  ],
  first: 'Nothing urgent: look at the light at its spot and at the gap to its neighbours.',
  steps: [
    'Raise the light in steps if it is dim (/light ramp).',
    'Offer food that suits it.',
    'Leave more room if a neighbour is within reach (/coral check).',
  ],
  never: ['No big jump of light.'],
  stop: 'It is not urgent. Ask with a photo if it gets worse all the same.',
  published: [`sweepers can form about 30 days after first contact (${readIn('Lapid2004')})`],
  sources: ['practice'],
};
