import type { SymptomCard } from '../card.ts';

export const baseRecedes: SymptomCard = {
  group: 'flesh',
  label: 'Flesh draws back from the base, slowly',
  causes: {
    alk: {
      name: 'low or swinging alkalinity',
      why: 'the commonest finding in the log',
      signs: ['alkalinity low', 'alkalinity moved', 'salinity off'],
    },
    shade: { name: 'shade from its own growth', why: 'lower branches get no light any more', signs: ['dim'] },
    dirt: { name: 'dirt at the base', why: 'flow no longer reaches it' },
    pest: { name: 'a pest or a new animal that eats it', why: 'some hide by day', signs: ['new animal'] },
    age: { name: 'old, shaded branches', why: 'normal on large colonies' },
  },
  questions: [
    {
      ask: 'How fast?',
      choices: {
        weeks: {
          label: 'over weeks',
          up: ['shade', 'dirt', 'age'],
          because: 'slow loss speaks for shade, dirt or age',
        },
        days: { label: 'over days', up: ['alk', 'pest'], because: 'days speak for the water or a pest' },
        centimetre: {
          label: '1 cm a day or more',
          up: ['alk'],
          because: 'so fast is peeling',
          first: 'Treat it as fast peeling: lift it out, or cut it 1 to 2 cm inside healthy flesh, today.',
          replaces: true,
        },
      },
    },
    {
      ask: 'What is behind the edge?',
      choices: {
        white: { label: 'clean white line', up: ['alk', 'pest'], because: 'a white line is fresh loss' },
        algae: { label: 'algae', up: ['shade', 'dirt'], because: 'algae behind it mean an old, slow loss' },
        crawling: { label: 'something crawls at night', up: ['pest'], because: 'you saw something crawl' },
      },
    },
  ],
  first: 'Test alkalinity, calcium, magnesium and salinity before you touch the coral.',
  steps: [
    'Clear the dirt off its base and let flow reach it.',
    'Look at night with a dim red torch for anything that eats it.',
    'Write the alkalinity of the last two weeks down: it should hold within half a dKH.',
  ],
  never: ['No glue over living flesh.', 'No large jump of alkalinity.'],
  stop: 'Faster than about 1 cm a day: cut today, and ask experienced keepers with a photo.',
  sources: ['practice'],
};
