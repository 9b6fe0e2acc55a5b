import type { SymptomCard } from '../card.ts';

export const redSlime: SymptomCard = {
  group: 'film',
  label: 'Red, purple or green slimy sheet that lifts off',
  causes: {
    still: { name: 'cyanobacteria where flow is weak', why: 'they settle in still corners on trapped waste' },
    zero: {
      name: 'cyanobacteria after nitrate or phosphate hit zero',
      why: 'it often appears then; others starve first',
      signs: ['zero'],
    },
    rich: { name: 'too much food or dirt', why: 'it feeds them', signs: ['rich'] },
    dinos: { name: 'dinoflagellates instead', why: 'brown and stringy, with dead snails' },
  },
  questions: [
    {
      ask: 'What do nitrate and phosphate read?',
      choices: {
        zero: { label: 'zero, one or both', up: ['zero'], because: 'nutrients read zero' },
        some: { label: 'something', up: ['still'], because: 'nutrients are there' },
        high: { label: 'high', up: ['rich'], because: 'nutrients are high' },
      },
    },
    {
      ask: 'How does it look?',
      choices: {
        sheets: {
          label: 'sheets, red or green',
          up: ['still'],
          down: ['dinos'],
          because: 'sheets that peel fit cyanobacteria',
        },
        strings: {
          label: 'brown strings, bubbles',
          up: ['dinos'],
          because: 'brown strings fit dinoflagellates',
        },
      },
    },
  ],
  first: 'Suck it out with a hose first; a slime killer is the last resort, not the first.',
  steps: [
    'More flow over that sand or rock, and no dead corners.',
    'Less food left over, dirt out of sand and sump. Check the RO water, and keep the usual water changes.',
    'Nitrate and phosphate at zero? Slime often comes then: let both read something, by feeding a little more.',
    'A shorter light day for some days helps some tanks.',
    'Likely cyanobacteria, but it may be dinoflagellates (stringy, brown, snails die).',
    'Post a photo, or look through a microscope. What brings it is disputed: do not promise yourself one cause.',
  ],
  never: [
    'No antibiotic without a vet, and never first.',
    'Any treatment by its label and with an air stone: it takes oxygen out of the water.',
  ],
  stop: 'It smothers corals, or snails die: ask experienced keepers with a photo.',
  sources: ['practice'],
};
