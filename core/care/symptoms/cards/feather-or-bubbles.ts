import type { SymptomCard } from '../card.ts';

export const featherOrBubbles: SymptomCard = {
  group: 'film',
  label: 'Feather-shaped algae, or hard green bubbles',
  causes: {
    feather: { name: 'Bryopsis', why: 'fronds like small feathers' },
    bubbles: { name: 'bubble algae (Valonia and kin)', why: 'hard green balls' },
  },
  questions: [
    {
      ask: 'Feathers or bubbles?',
      choices: {
        feathers: { label: 'feathers', up: ['feather'], because: 'feathers' },
        bubbles: { label: 'hard bubbles', up: ['bubbles'], because: 'hard bubbles' },
      },
    },
  ],
  first: 'Take the rock out and pick it off outside the tank.',
  steps: [
    'Lift bubbles off whole, with their foot.',
    'Rinse the rock in tank water before it goes back.',
    'Look every week for what grows again.',
  ],
  never: [
    'Zoanthids on that rock? Gloves and eye protection, keep it wet, no scrubbing: some hold palytoxin.',
    'Do not burst bubbles in the tank.',
    'Do not guess a medicine against it.',
  ],
  stop: 'Before any medicine: ask a vet who knows fish, or experienced keepers.',
  sources: ['practice'],
};
