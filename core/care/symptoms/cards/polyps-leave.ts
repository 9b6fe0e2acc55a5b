import type { SymptomCard } from '../card.ts';

export const polypsLeave: SymptomCard = {
  group: 'flesh',
  label: 'Polyps let go and float',
  causes: {
    water: {
      name: 'severe stress by the water',
      why: 'salinity, heat or alkalinity',
      signs: ['salinity off', 'salinity moved', 'hot', 'temperature moved'],
    },
    alk: {
      name: 'low alkalinity',
      why: 'the skeleton is not held any more',
      signs: ['alkalinity low', 'alkalinity moved'],
    },
    hurt: { name: 'an old injury', why: 'a torn base lets go late' },
  },
  questions: [
    {
      ask: 'Do other corals look bad?',
      choices: {
        no: { label: 'only this one', up: ['hurt'], because: 'the others are well' },
        yes: {
          label: 'others too',
          up: ['water'],
          because: 'others suffer too',
          first: 'Read temperature and salinity now.',
        },
      },
    },
  ],
  first:
    'Test salinity, temperature and alkalinity now, and catch the polyps in a mesh box with gentle flow.',
  steps: ['Bring back slowly what is off.', 'A polyp can settle again on rubble over weeks.'],
  never: ['Do not blame the light first.'],
  stop: 'More corals follow: ask experienced keepers the same day.',
  sources: ['practice'],
};
