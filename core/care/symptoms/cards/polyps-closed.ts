import type { SymptomCard } from '../card.ts';

export const polypsClosed: SymptomCard = {
  group: 'shape',
  label: 'Polyps stay closed',
  causes: {
    settling: { name: 'a new coral settling', why: 'days to two weeks are usual', signs: ['new coral'] },
    water: {
      name: 'a shift of salinity or alkalinity',
      why: 'it shuts many at once',
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
    flow: { name: 'too much or too little flow', why: 'soft flesh moves gently and is never pressed flat' },
    light: {
      name: 'a change of light',
      why: 'a brighter lamp or a move',
      signs: ['bright', 'dim', 'new light', 'handled'],
    },
    pest: {
      name: 'a fish, crab, shrimp or pest that bothers it',
      why: 'often at night',
      signs: ['new animal'],
    },
    dose: {
      name: 'something that went into the water',
      why: 'many shut for hours after it',
      signs: ['dosed'],
    },
    sting: { name: 'a sting from a neighbour', why: 'sweepers reach farther at night', signs: ['sting'] },
  },
  questions: [
    {
      ask: 'All corals, or one?',
      choices: {
        all: {
          label: 'all at once',
          up: ['water'],
          down: ['settling', 'pest', 'sting'],
          because: 'all at once speak for the water',
          first: 'Check temperature, salinity and the pumps now, and think of sprays or cleaners.',
        },
        one: {
          label: 'one',
          up: ['pest', 'sting', 'flow'],
          down: ['water'],
          because: 'one alone speaks for its place',
        },
      },
    },
    {
      ask: 'How long has it been in the tank?',
      choices: {
        new: { label: 'less than two weeks', up: ['settling'], because: 'it is new' },
        old: { label: 'longer', down: ['settling'], because: 'it had settled long ago' },
        moved: { label: 'moved lately', up: ['light', 'flow'], because: 'its place is new' },
      },
    },
  ],
  first: 'Leave it alone, and test salinity and alkalinity with instruments you trust.',
  steps: [
    'A new coral gets three to seven days of peace.',
    'Look at night with a dim torch for pests and for a neighbour that reaches it.',
    'Change one thing at a time: flow first.',
    'Post a photo with white light.',
  ],
  never: ['Do not move it every day.', 'Do not dip it again and again.'],
  stop: 'Flesh that draws back or brown jelly: act the same day and ask. All corals shut at once: look for the cause now.',
  sources: ['practice'],
};
