import type { SymptomCard } from '../card.ts';

export const fishSpots: SymptomCard = {
  group: 'fish',
  label: 'White spots or dust on fish',
  causes: {
    ich: { name: 'marine ich', why: 'spots like grains of salt, coming and going' },
    velvet: { name: 'velvet', why: 'fine as powder, fast breathing, quick' },
    sand: { name: 'sand or bubbles', why: 'gone within minutes' },
    lumps: { name: 'lymphocystis', why: 'pale lumps on fins, slow and mostly harmless' },
  },
  questions: [
    {
      ask: 'How large?',
      choices: {
        salt: { label: 'like salt', up: ['ich'], because: 'grains of salt fit ich' },
        powder: {
          label: 'fine as powder',
          up: ['velvet'],
          because: 'powder fits velvet',
          first: 'Fine powder with fast breathing kills within days: ask a vet or fish-disease helpers now.',
        },
        lumps: { label: 'lumps on fins', up: ['lumps'], because: 'lumps on fins' },
      },
    },
    {
      ask: 'How does it breathe?',
      choices: {
        fast: {
          label: 'fast',
          up: ['velvet'],
          because: 'fast breathing speaks for velvet',
          first: 'Air stone now, and ask a vet or fish-disease helpers today.',
        },
        normal: {
          label: 'as usual',
          up: ['ich', 'sand', 'lumps'],
          down: ['velvet'],
          because: 'it breathes as usual',
        },
      },
    },
  ],
  first:
    'Count its breaths and take sharp photos before anything else; then a tank of its own, where it can be told what it is.',
  steps: [
    'Watch its breathing every hour if the dust is fine.',
    'Test ammonia, salinity and temperature.',
    'Keep it calm and feeding.',
  ],
  never: ['No copper and no other medicine in a reef tank.'],
  stop: 'Powder-fine dust with fast breathing: a vet who knows fish, or experienced helpers, now. Any treatment and its dose come from them and the label.',
  sources: ['practice'],
  urgent: 'oxygen loss',
};
