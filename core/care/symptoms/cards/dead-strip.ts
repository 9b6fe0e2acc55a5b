import { readIn } from '../../../corals/basis-words.ts';
import type { SymptomCard } from '../card.ts';

export const deadStrip: SymptomCard = {
  group: 'flesh',
  label: 'Dead strip on the side to a neighbour',
  causes: {
    sting: {
      name: 'sweepers or filaments of the neighbour',
      why: 'they reach farther at night',
      signs: ['sting'],
    },
    flow: { name: 'one-way flow that carries sweepers over', why: 'the side downstream suffers' },
  },
  questions: [
    {
      ask: 'Seen at night with a dim torch?',
      choices: {
        yes: { label: 'yes, they touch', up: ['sting'], because: 'you saw them touch' },
        no: { label: 'not looked yet', because: 'at night it can be seen' },
      },
    },
  ],
  first: 'Move the two apart today, beyond the reach of the stronger one (/coral check).',
  steps: [
    'Look tonight how far tentacles reach.',
    'Turn the flow so that it does not carry sweepers across.',
    'If neither can move, put a rock between them.',
  ],
  never: ['Do not turn the loser round to face it again.'],
  stop: 'Brown jelly on the wound. Otherwise it is not urgent once they are apart.',
  published: [
    `a brain coral reached 5.3 cm on average, deviation 3.0 (${readIn('Lapid2004')}); a mushroom and brain corals held each other off at 1 to 3 cm (${readIn('LangmeadChadwick1999')})`,
  ],
  sources: ['practice'],
};
