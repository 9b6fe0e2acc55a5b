import { readIn } from '../../../corals/basis-words.ts';
import type { SymptomCard } from '../card.ts';

export const ammoniaSeen: SymptomCard = {
  group: 'water',
  label: 'Ammonia or nitrite detected',
  causes: {
    uncycled: {
      name: 'a tank not cycled, or too many new animals',
      why: 'the filter has not caught up',
      signs: ['young tank', 'nitrite'],
    },
    death: { name: 'a death or rotting food', why: 'count everybody' },
    cleaned: { name: 'a filter cleaned too hard', why: 'the bacteria went down the drain' },
    false: { name: 'a false reading', why: 'some products that bind ammonia upset kits' },
  },
  questions: [
    {
      ask: 'How old is the tank?',
      choices: {
        young: {
          label: 'under three months',
          up: ['uncycled'],
          because: 'the tank is young',
          signs: ['young tank'],
        },
        old: {
          label: 'older',
          up: ['death', 'cleaned', 'false'],
          down: ['uncycled'],
          because: 'an old tank shows none, so something happened',
        },
      },
    },
    {
      ask: 'What happened lately?',
      choices: {
        death: { label: 'something died or is missing', up: ['death'], because: 'an animal is missing' },
        clean: { label: 'cleaned filter or sand', up: ['cleaned'], because: 'the filter was cleaned' },
        binder: { label: 'used an ammonia binder', up: ['false'], because: 'a binder can fool the kit' },
        added: { label: 'added animals', up: ['uncycled'], because: 'there is more to carry' },
      },
    },
  ],
  first: 'Stop feeding, take out anything dead, and test again with a fresh sample.',
  steps: [
    'Confirmed ammonia: change a quarter to a half with matched water.',
    'Filter media from a healthy tank, if you can get some.',
    'A binder by its own label if fish suffer.',
    'Nitrite alone is far less toxic in sea water: no panic, but no new animals.',
  ],
  never: ['Do not add animals.', 'Do not chase nitrite to zero in a panic.'],
  stop: 'Fish in distress, or more than 0.5 mg/L ammonia in all with fish in: a vet who knows fish, today.',
  published: [
    `nitrite in sea water: half of young clownfish died in 96 h at 108.8 mg/L NO2-N, gill changes from 25 (${readIn('Medeiros2014')})`,
  ],
  sources: ['practice'],
  change: [0.25, 0.5],
  urgent: 'ammonia',
};
