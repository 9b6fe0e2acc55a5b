import type { SymptomCard } from '../card.ts';

export const fishWound: SymptomCard = {
  group: 'fish',
  label: 'Wound, torn fin, bad eye or lump on a fish',
  causes: {
    fight: { name: 'bites of another fish', why: 'torn fins, missing scales, it hides' },
    knock: { name: 'a knock, a net or a pump', why: 'one side or one eye' },
    germs: { name: 'germs in it', why: 'red, fluffy, cloudy or growing', signs: ['ammonia'] },
    growth: { name: 'a growth', why: 'pale firm lumps, slow, mostly on fins and lips' },
  },
  questions: [
    {
      ask: 'What is it like?',
      choices: {
        torn: { label: 'torn or scraped', up: ['fight', 'knock'], because: 'torn or scraped fits a hurt' },
        red: { label: 'red, fluffy or larger each day', up: ['germs'], because: 'it reddens or grows' },
        lump: { label: 'a firm pale lump', up: ['growth'], because: 'a firm pale lump' },
      },
    },
    {
      ask: 'An eye?',
      choices: {
        one: { label: 'one eye', up: ['knock'], because: 'one eye fits a knock' },
        both: { label: 'both eyes', up: ['germs'], because: 'both eyes speak for water or germs' },
        none: { label: 'no eye', because: 'no eye is hurt' },
      },
    },
  ],
  first: 'Watch from afar who chases it, and part them: a mesh box in the tank, in its own water.',
  steps: [
    'Test ammonia, temperature and salinity: clean water heals most wounds.',
    'Feed it well, with the others busy elsewhere. Light down for a day.',
    'A sharp photo each day tells whether it heals or grows.',
  ],
  never: ['No medicine into the reef; nothing cut off, pressed out or dabbed on.'],
  stop: 'Red, fluffy, larger each day, both eyes out, or it stops eating: a vet who knows fish.',
  sources: ['practice'],
};
