import type { SymptomCard } from '../card.ts';

export const greenHair: SymptomCard = {
  group: 'film',
  label: 'Green hair or turf algae',
  causes: {
    rich: {
      name: 'more nutrients than are taken out',
      why: 'the algae may hold them while tests read little',
      signs: ['rich'],
    },
    grazers: { name: 'too few grazers', why: 'nothing eats it' },
    hours: { name: 'a long light day', why: 'light for nothing but algae' },
    source: { name: 'source water', why: 'it brings nutrients in with every litre' },
    young: { name: 'a young tank', why: 'usual in the first months', signs: ['young tank'] },
  },
  questions: [
    {
      ask: 'How long is full light on?',
      choices: {
        short: { label: 'up to 9 hours', up: ['rich', 'grazers'], because: 'the light day is not long' },
        long: { label: 'longer', up: ['hours'], because: 'the light day is long' },
      },
    },
    {
      ask: 'What does the RO water read?',
      choices: {
        none: { label: 'nothing', down: ['source'], because: 'the source water is clean' },
        some: { label: 'something', up: ['source'], because: 'the source water carries something' },
        tap: { label: 'I use tap water', up: ['source'], because: 'tap water carries nutrients' },
      },
    },
  ],
  first: 'Pull it out by hand and suck the bits up.',
  steps: [
    'Add grazers that suit the tank.',
    'Shorten the light by one to two hours.',
    'Check the source water.',
    'Test nitrate and phosphate, knowing that the algae take them up first.',
  ],
  never: ['No blackout with corals that need much light.'],
  stop: 'It is not urgent. Ask with a photo if it gets worse all the same.',
  sources: ['practice'],
};
