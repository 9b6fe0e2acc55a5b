import { readIn } from '../../../corals/basis-words.ts';
import type { SymptomCard } from '../card.ts';

export const fleshPeels: SymptomCard = {
  group: 'flesh',
  label: 'Flesh peels off within a day, bare skeleton',
  causes: {
    shock: {
      name: 'a shock of alkalinity, salinity or heat',
      why: 'look at the last two days first',
      signs: [
        'alkalinity moved',
        'alkalinity high',
        'salinity moved',
        'salinity off',
        'hot',
        'temperature moved',
      ],
    },
    infection: { name: 'tissue loss by bacteria or ciliates', why: 'it spreads with the flow and on tools' },
    eaten: {
      name: 'an animal that eats it',
      why: 'ragged holes by the morning; fish, crabs and hungry shrimps do it',
      signs: ['new animal'],
    },
    shipping: {
      name: 'damage after shipping',
      why: 'a new coral can fail days later',
      signs: ['new coral', 'handled'],
    },
  },
  questions: [
    {
      ask: 'One colony, or several?',
      choices: {
        one: {
          label: 'one',
          up: ['infection', 'shipping'],
          because: 'one alone speaks for the coral itself',
        },
        several: {
          label: 'several',
          up: ['shock'],
          because: 'several at once speak for the water',
          first: 'Stop all dosing and read temperature, salinity and alkalinity now.',
        },
      },
    },
    {
      ask: 'Did a number jump in the last two days?',
      choices: {
        yes: { label: 'yes', up: ['shock'], because: 'a number jumped' },
        no: {
          label: 'no, tested',
          up: ['infection'],
          down: ['shock'],
          because: 'the water is tested and steady',
        },
        new: { label: 'it is new', up: ['shipping'], because: 'it came lately' },
      },
    },
  ],
  first:
    'Isolate it now: take it out, or cut 1 to 2 cm inside healthy flesh and keep the healthy pieces apart.',
  steps: [
    'Fresh carbon, and good flow in the tank.',
    'Test everything. Correct slowly what is off.',
    'Keep a few healthy pieces in another tank, if somebody can take them.',
    'Wash tools and hands before you touch another coral.',
  ],
  never: ['Do not medicate the display.', 'Do not touch healthy corals with the same tools.'],
  stop: 'Several colonies within a day: add nothing, and ask an aquatic vet or very experienced keepers the same day.',
  published: [`tissue loss in tanks and in nature is hard to match (${readIn('Sweet2011')})`],
  sources: ['practice'],
};
