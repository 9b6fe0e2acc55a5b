import { AMMONIA_HARM } from '../../urgent/chemistry.ts';
import type { SymptomCard } from '../card.ts';

export const fishBreathesFast: SymptomCard = {
  group: 'fish',
  label: 'Fish breathing fast or at the surface',
  causes: {
    oxygen: { name: 'too little oxygen', why: 'all fish, mostly towards morning', signs: ['hot'] },
    ammonia: { name: 'ammonia', why: 'it burns gills', signs: ['ammonia', 'young tank'] },
    parasite: { name: 'a gill parasite', why: 'one fish first, often with fine dust on it' },
    poison: { name: 'something poisonous', why: 'spray, cleaner, a treatment, a dosing accident' },
  },
  questions: [
    {
      ask: 'All fish, or one?',
      choices: {
        all: {
          label: 'all',
          up: ['oxygen', 'ammonia', 'poison'],
          down: ['parasite'],
          because: 'all at once speak for the water',
        },
        one: { label: 'one or some', up: ['parasite'], because: 'one alone speaks for the fish' },
      },
    },
    {
      ask: 'Anything else?',
      choices: {
        dust: { label: 'dust or spots on it', up: ['parasite'], because: 'dust or spots show' },
        power: { label: 'pumps off or weak', up: ['oxygen'], because: 'the surface did not move' },
        added: {
          label: 'something new was added',
          up: ['poison', 'ammonia'],
          because: 'something new went in',
        },
        nothing: { label: 'nothing', up: ['ammonia'], because: 'nothing else is seen, so test' },
      },
    },
  ],
  first: 'Oxygen first: air stone in and a pump at the surface, now.',
  steps: [
    'Test ammonia and temperature.',
    'Ammonia or a poison: change 20 to 30 % with matched water.',
    'A tank of its own only when it is ready and cycled.',
    'Look closely for dust, spots and clamped fins, and post a short video.',
  ],
  never: ['Do not medicate a reef display.'],
  stop: 'Still gasping after oxygen, or you think of a medicine: a vet who knows fish.',
  published: [AMMONIA_HARM],
  sources: ['practice'],
  change: [0.2, 0.3],
  urgent: 'oxygen loss',
};
