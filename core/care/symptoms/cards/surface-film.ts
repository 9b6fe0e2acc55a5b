import type { SymptomCard } from '../card.ts';

export const surfaceFilm: SymptomCard = {
  group: 'water',
  label: 'Foam or an oily film on the surface',
  causes: {
    still: {
      name: 'proteins and fats on a still surface',
      why: 'food, slime and algae leave them, and nothing draws them off',
    },
    dirty: { name: 'much food, or something dead', why: 'more proteins than the skimmer takes out' },
    added: {
      name: 'something that got in',
      why: 'soap, hand cream, spray, cooking fat, epoxy, glue or an additive',
    },
  },
  questions: [
    {
      ask: 'What do you see?',
      choices: {
        film: {
          label: 'a thin film, like oil or dust',
          up: ['still'],
          because: 'a film gathers where nothing draws it off',
        },
        foam: {
          label: 'foam that stays',
          up: ['dirty', 'added'],
          because: 'foam that stays means much in the water',
        },
        rainbow: {
          label: 'rainbow colours, or a smell',
          up: ['added'],
          because: 'colours or a smell mean something got in',
          first: 'Stop the source and put fresh carbon in now.',
        },
      },
    },
    {
      ask: 'How do fish breathe?',
      choices: {
        fast: {
          label: 'fast, or at the surface',
          up: ['dirty', 'added'],
          because: 'fish breathe fast',
          first: 'Oxygen first: air stone and a pump at the surface, now.',
        },
        normal: { label: 'as usual', up: ['still'], because: 'fish breathe as usual' },
      },
    },
  ],
  first: 'Turn a pump up at the surface until it ripples: a film keeps oxygen out.',
  steps: [
    'Draw the film off: the overflow must skim, or lay plain kitchen paper (no print, no scent) on it and lift it.',
    'Feed a little less, clean the skimmer cup, look for something dead, and test ammonia.',
    'Fresh carbon if anything may have got in. Rinse hands and arms without soap before they go in.',
  ],
  never: [
    'No soap or household cleaner near the tank.',
    'Nothing bought to break the foam before the cause is known.',
  ],
  stop: 'Fish gasping: oxygen first, then ask at once.',
  sources: ['practice'],
  urgent: 'oxygen loss',
};
