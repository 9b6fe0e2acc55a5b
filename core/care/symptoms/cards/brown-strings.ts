import { readIn } from '../../../corals/basis-words.ts';
import type { SymptomCard } from '../card.ts';

export const brownStrings: SymptomCard = {
  group: 'film',
  label: 'Brown snotty strings with bubbles, gone at night',
  causes: {
    zero: {
      name: 'dinoflagellates after nutrients hit zero',
      why: 'nothing competes with them then',
      signs: ['zero'],
    },
    dinos: {
      name: 'dinoflagellates in a young or dry-rock tank',
      why: 'little else lives there yet',
      signs: ['young tank'],
    },
    cyano: { name: 'cyanobacteria or diatoms', why: 'only a microscope tells for sure' },
  },
  questions: [
    {
      ask: 'What do nitrate and phosphate read?',
      choices: {
        zero: { label: 'zero, one or both', up: ['zero'], because: 'nutrients read zero' },
        some: { label: 'something', up: ['dinos', 'cyano'], because: 'nutrients are there' },
      },
    },
    {
      ask: 'Do snails or fish die?',
      choices: {
        yes: {
          label: 'yes',
          up: ['zero', 'dinos'],
          down: ['cyano'],
          because: 'deaths speak for a toxic kind',
          first: 'Gloves and eye cover from now on, open windows, fresh carbon: some kinds are toxic.',
        },
        no: { label: 'no', because: 'no deaths so far' },
      },
    },
  ],
  first: 'Let nitrate and phosphate read something: feed more, and stop carbon dosing and hard skimming.',
  steps: [
    'Suck it out in the evening, with gloves, and run fresh carbon.',
    'Have it looked at under a microscope before you choose a method.',
  ],
  never: [
    'No bare hands, no splashing; people and pets away from spray and drying slime: some kinds are toxic.',
    'No big water changes.',
  ],
  stop: 'Snails or fish die, or any person feels ill (/urgent what:person hurt).',
  published: [`Ostreopsis carries toxins, in the air too (${readIn('Accoroni2016')})`],
  sources: ['practice'],
  hurt: 'palytoxin breathed',
};
