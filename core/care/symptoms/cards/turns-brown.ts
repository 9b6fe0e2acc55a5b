import type { SymptomCard } from '../card.ts';

export const turnsBrown: SymptomCard = {
  group: 'colour',
  label: 'A coral turns brown',
  causes: {
    dim: { name: 'too little light', why: 'it makes more of its brown algae', signs: ['dim'] },
    rich: { name: 'nitrate or phosphate high', why: 'plenty of food for the algae in it', signs: ['rich'] },
    moved: {
      name: 'shipping or a move',
      why: 'colour often goes first and comes back',
      signs: ['new coral'],
    },
    healing: { name: 'recovery after bleaching', why: 'a good sign' },
  },
  questions: [
    {
      ask: 'What came before?',
      choices: {
        new: { label: 'new or moved', up: ['moved'], because: 'it was moved lately' },
        pale: { label: 'it was pale before', up: ['healing'], because: 'brown after pale is recovery' },
        dimmer: { label: 'less light', up: ['dim'], because: 'it gets less light than before' },
        nothing: { label: 'none of these', up: ['rich'], because: 'nothing changed, so look at nutrients' },
      },
    },
  ],
  first: 'No hurry: leave it where it is and test nitrate and phosphate.',
  steps: [
    'If it gets less than its range, raise the light slowly (/light ramp).',
    'See that the flow moves its flesh.',
    'Does it open and grow? Then only the colour is off.',
  ],
  never: ['Do not strip nutrients fast.'],
  stop: 'When flesh is lost. Until then it is not urgent.',
  sources: ['practice'],
};
