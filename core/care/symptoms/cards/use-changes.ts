import type { SymptomCard } from '../card.ts';

export const useChanges: SymptomCard = {
  group: 'water',
  label: 'Alkalinity use suddenly falls or rises',
  causes: {
    stress: {
      name: 'corals that stopped growing',
      why: 'use falls before anything is seen',
      signs: ['salinity off', 'hot', 'cold', 'temperature moved'],
    },
    loss: { name: 'tissue loss beginning', why: 'less living flesh uses less' },
    doser: {
      name: 'a fault of the doser or the solution',
      why: 'the dose is not what you think',
      signs: ['alkalinity moved', 'alkalinity high', 'alkalinity low'],
    },
    growth: { name: 'more growth', why: 'use rises month by month' },
    kit: { name: 'the test', why: 'old reagent, another bottle' },
  },
  questions: [
    {
      ask: 'Which way?',
      choices: {
        falls: {
          label: 'it uses less',
          up: ['stress', 'loss', 'doser'],
          down: ['growth'],
          because: 'use fell',
        },
        rises: {
          label: 'it uses more',
          up: ['growth', 'doser'],
          down: ['stress', 'loss'],
          because: 'use rose',
        },
      },
    },
    {
      ask: 'How sure are the readings?',
      choices: {
        sure: { label: 'three days, two kits', down: ['kit'], because: 'the readings are sure' },
        unsure: {
          label: 'one or two readings',
          up: ['kit'],
          because: 'few readings can mislead',
          first: 'Test on two more days before anything else.',
        },
      },
    },
  ],
  first: 'Test again with another kit, and hold the dosing as it is until it is confirmed.',
  steps: [
    'Look at every coral for flesh drawing back.',
    'Measure what the doser really gives.',
    'Work the use out from the log (/dose use).',
  ],
  never: ['Do not double a dose on one reading.'],
  stop: 'Use falls and flesh is lost: ask experienced keepers the same day.',
  sources: ['practice'],
};
