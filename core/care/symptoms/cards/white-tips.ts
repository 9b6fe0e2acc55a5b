import type { SymptomCard } from '../card.ts';

export const whiteTips: SymptomCard = {
  group: 'colour',
  label: 'Tips white or bare, base fine',
  causes: {
    growth: { name: 'growth', why: 'white tips with flesh on them are normal in small-polyp corals' },
    light: { name: 'light too strong', why: 'tips are nearest to the lamp', signs: ['bright'] },
    alk: {
      name: 'alkalinity that is high or rose within days',
      why: 'known as burnt tips, most with hardly any nutrients',
      signs: ['alkalinity high', 'alkalinity moved', 'zero'],
      first:
        'Raise alkalinity no further: hold it where it is for two weeks, and test nitrate and phosphate.',
    },
    sting: { name: 'a sting from above', why: 'tips are what reaches a neighbour', signs: ['sting'] },
  },
  questions: [
    {
      ask: 'Is there flesh on the white tips?',
      choices: {
        flesh: { label: 'yes, flesh', up: ['growth'], because: 'flesh on white tips is growth' },
        bare: { label: 'no, bare', down: ['growth'], because: 'bare tips are no growth' },
      },
    },
    {
      ask: 'What changed?',
      choices: {
        lamp: { label: 'lamp or its hours', up: ['light'], because: 'the light changed' },
        dosing: { label: 'dosing', up: ['alk'], because: 'dosing changed' },
        nothing: { label: 'nothing', because: 'nothing is known to have changed' },
      },
    },
  ],
  first: 'Look closely whether the tips are bare or only white, and test alkalinity, nitrate and phosphate.',
  steps: [
    'Bare: take the light down one step.',
    'Nutrients near zero: let alkalinity drift to the low end of its range, and feed a little more.',
    'Look at night for a neighbour that reaches it.',
  ],
  never: ['Do not chase several numbers at once.'],
  stop: 'The bare part grows from day to day: see "flesh peels off".',
  sources: ['practice'],
};
