import type { SymptomCard } from '../card.ts';

export const glassAnemones: SymptomCard = {
  group: 'pests',
  label: 'Small brown glass anemones spreading',
  causes: {
    aiptasia: { name: 'glass anemones (Aiptasia)', why: 'a trumpet with fine tentacles' },
    majano: { name: 'majano anemones', why: 'short, with blunt tips' },
  },
  questions: [
    {
      ask: 'What do they look like?',
      choices: {
        fine: { label: 'fine tentacles', up: ['aiptasia'], because: 'fine tentacles' },
        blunt: { label: 'blunt tips', up: ['majano'], because: 'blunt tips' },
      },
    },
  ],
  first: 'Do not scrape it: treat each where it sits, or take its rock out.',
  steps: [
    'Eye protection and gloves: a poked one can squirt, and zoanthids beside it may hold palytoxin.',
    'A product made for it, by its own label, one at a time, pumps off.',
    'An animal that eats them, if it suits the tank and its corals.',
    'Look for the next ones every week.',
  ],
  never: ['Do not cut or crush it: every piece grows again.'],
  stop: 'It is not urgent. Ask with a photo if it gets worse all the same.',
  sources: ['practice'],
};
