import type { SymptomCard } from '../card.ts';

export const brownDust: SymptomCard = {
  group: 'film',
  label: 'Thin brown dust on sand and glass',
  causes: {
    diatoms: { name: 'diatoms', why: 'usual in the first weeks', signs: ['young tank'] },
    source: { name: 'silicate in the source water', why: 'where it comes back in an older tank' },
    dinos: { name: 'dinoflagellates', why: 'if it is stringy with bubbles' },
  },
  questions: [
    {
      ask: 'How old is the tank?',
      choices: {
        young: {
          label: 'under three months',
          up: ['diatoms'],
          because: 'the tank is young',
          signs: ['young tank'],
        },
        old: { label: 'older', up: ['source'], down: ['diatoms'], because: 'the tank is older' },
      },
    },
    {
      ask: 'How does it sit?',
      choices: {
        wipes: {
          label: 'wipes off like dust',
          up: ['diatoms'],
          down: ['dinos'],
          because: 'dust that wipes off is diatoms',
        },
        strings: {
          label: 'strings with bubbles',
          up: ['dinos'],
          because: 'strings with bubbles are something else',
        },
      },
    },
  ],
  first: 'Patience: in a young tank it goes by itself within weeks.',
  steps: [
    'Wipe it off, and let snails have it once the tank has cycled.',
    'Check the top-off and mixing water: it should hold next to nothing.',
  ],
  never: ['No chemicals against it.'],
  stop: 'It is not urgent. Ask with a photo if it gets worse all the same.',
  sources: ['practice'],
};
