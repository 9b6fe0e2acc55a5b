import type { SymptomCard } from '../card.ts';

export const slimy: SymptomCard = {
  group: 'shape',
  label: 'A coral makes much slime or strings',
  causes: {
    handled: {
      name: 'handling or a new place',
      why: 'slime is its first defence',
      signs: ['new coral', 'handled'],
    },
    fed: {
      name: 'food or amino acids just given',
      why: 'many slime and put out threads (gut outside the mouth) to feed: over in hours',
      signs: ['fed'],
      first:
        'Give half as much or less often, and look the next morning: threads after food mostly go within hours.',
    },
    sediment: {
      name: 'sand or dirt on it',
      why: 'it cleans itself',
      signs: ['sand stirred'],
      first: 'Blow the sand off with a gentle jet, and leave it: it washes itself with slime within days.',
    },
    chemical: { name: 'something in the water', why: 'glue, spray, a treatment', signs: ['dosed'] },
    sting: { name: 'a sting', why: 'whitish threads toward a neighbour', signs: ['sting'] },
    wax: { name: 'a normal film', why: 'leathers and Porites shed one' },
  },
  questions: [
    {
      ask: 'Just moved or glued?',
      choices: {
        yes: { label: 'yes', up: ['handled'], because: 'it was just handled', signs: ['handled'] },
        no: { label: 'no', down: ['handled'], because: 'nobody touched it' },
      },
    },
    {
      ask: 'One coral, or many?',
      choices: {
        one: { label: 'one', up: ['sediment', 'sting', 'wax'], because: 'one alone speaks for its place' },
        many: {
          label: 'many',
          up: ['chemical'],
          because: 'many at once speak for the water',
          first: 'Fresh carbon now, and ask who sprayed, painted or cleaned.',
        },
      },
    },
  ],
  first: 'Leave it alone if it was just moved; give it gentle, steady flow.',
  steps: [
    'Threads only after food or amino acids, gone next morning: give half or less often, and see if it stops.',
    'Many corals: fresh carbon and a modest, matched water change.',
    'Look at what was new in the room and on the tank.',
  ],
  never: ['No more dips.'],
  stop: 'Much slime everywhere and fish in trouble: an emergency, ask within the hour.',
  sources: ['practice'],
  change: [0.1, 0.2],
  urgent: 'bleach or spray',
};
