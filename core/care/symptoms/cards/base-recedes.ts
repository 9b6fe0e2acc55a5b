import type { SymptomCard } from '../card.ts';

export const baseRecedes: SymptomCard = {
  group: 'flesh',
  label: 'Flesh draws back from the base, slowly',
  said: [
    [
      [
        'reced(?:es?|ed|ing)',
        'recession',
        'stn',
        '(?:dying|dead|bare|skeleton|white|pale|bleach\\w*|going|peeling) (?:at|from) the (?:base|bottom)',
        'dying back',
        '(?:base|bottom) of (?:my |the |an? )?(?!tank|reef|sump|glass)\\w+ (?:is |are |looks |going )*(?:dying|white|bare|dead|receding)',
        'necro(?:sis|tic|sing)',
        '(?:from|at) (?:the |its )?(?:base|bottom)(?: up| upwards?| and)? (?:is |are )?(?:creeping|white|dying|dead|bare|peeling|receding)',
        '(?:white|bare|dead|dying) (?:\\w+ )?(?:from|at|around) (?:the |its )?(?:base|bottom)',
        'losing (?:flesh|tissue|skin)',
        'skeleton (?:is )?(?:showing|visible|shows|exposed)',
        '(?:see|seeing|exposed|bare) (?:the |its |bare )?skeleton',
        '(?:flesh|tissue) (?:is )?(?:pulling|drawing|coming) (?:back|off|away)',
      ],
    ],
  ],
  causes: {
    alk: {
      name: 'low or swinging alkalinity',
      why: 'the commonest finding in the log',
      signs: ['alkalinity low', 'alkalinity moved', 'salinity off'],
    },
    shade: { name: 'shade from its own growth', why: 'lower branches get no light any more', signs: ['dim'] },
    dirt: { name: 'dirt at the base', why: 'flow no longer reaches it' },
    pest: { name: 'a pest at the base', why: 'some hide by day' },
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
