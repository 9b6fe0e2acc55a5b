import { readIn } from '../../../corals/basis-words.ts';
import type { SymptomCard } from '../card.ts';

export const brownJelly: SymptomCard = {
  group: 'flesh',
  label: 'Brown jelly on a large-polyp coral, foul smell',
  causes: {
    rot: { name: 'breakdown by ciliates and bacteria', why: 'it follows an injury and eats on quickly' },
    hurt: {
      name: 'an injury, shipping or a sting before it',
      why: 'that is how it gets in',
      signs: ['new coral', 'sting'],
    },
  },
  questions: [
    {
      ask: 'How far has it gone?',
      choices: {
        one: { label: 'one head', up: ['hurt'], because: 'one head speaks for an injury there' },
        more: { label: 'several heads or corals', up: ['rot'], because: 'it is spreading' },
      },
    },
  ],
  first:
    'Switch the flow off now, suck the jelly out with a hose, and lift the coral out into a tub of tank water.',
  steps: [
    'Cut off the heads that have it, with some healthy margin. Wall kinds are often lost.',
    'A dip made for corals, by its own label, then clean flow in a tank of its own.',
    'Flow in the display on again when the jelly is gone.',
    'Look at its neighbours tonight and tomorrow.',
  ],
  never: ['Do not blow the jelly round the tank.', 'Do not leave it until morning.'],
  stop: 'It comes back, or a second coral has it within a day: ask an aquatic vet or experienced keepers.',
  published: [
    `ciliates are found in it, what they are called is uncertain (${readIn('Sweet2011')}); Euphyllia and Goniopora are prone to it (${readIn('JMST2013')})`,
  ],
  sources: ['practice'],
};
