import type { SymptomCard } from '../card.ts';

export const leatherWax: SymptomCard = {
  group: 'shape',
  label: 'Leather coral shut and shiny like wax',
  causes: {
    shedding: {
      name: 'shedding a waxy layer',
      why: 'leathers do it now and then, for days to two weeks, and often stand larger after it',
    },
    flow: { name: 'too little flow over the cap', why: 'the layer does not come off' },
    water: {
      name: 'a shift of the water',
      why: 'then others look bad too',
      signs: [
        'salinity off',
        'salinity moved',
        'alkalinity moved',
        'alkalinity low',
        'alkalinity high',
        'hot',
        'cold',
      ],
    },
    rot: { name: 'a rotting patch', why: 'soft, black or white, and it smells' },
  },
  questions: [
    {
      ask: 'Is any of it soft, smelly, black, or with a hole that grows?',
      choices: {
        no: {
          label: 'no',
          up: ['shedding'],
          down: ['rot'],
          because: 'firm and without smell speaks for shedding',
        },
        yes: {
          label: 'yes',
          up: ['rot'],
          because: 'soft, dark or smelling flesh rots',
          first: 'Photograph it now, and cut away or lift out what rots.',
          replaces: true,
        },
      },
    },
    {
      ask: 'Do other corals look bad?',
      choices: {
        no: {
          label: 'all else fine',
          up: ['shedding', 'flow'],
          down: ['water'],
          because: 'all else is well',
        },
        yes: { label: 'others too', up: ['water'], because: 'others are shut too' },
      },
    },
  ],
  first: 'Most likely it is shedding a waxy layer: leave it where it is and give more flow across the cap.',
  steps: [
    'Blow loose film off with a gentle puff of water.',
    'Give it days to two weeks; many are larger after it.',
    'Check salinity, alkalinity and temperature meanwhile.',
    'Post a photo: from words alone I cannot be sure.',
  ],
  never: ['Do not peel hard and do not move it.', 'No dip and no treatment while it only looks waxy.'],
  stop: 'Soft, smelly, black or white rotting patches, a hole that grows, or other corals shut too: ask experienced keepers with a photo.',
  sources: ['practice'],
};
