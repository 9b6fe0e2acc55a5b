import { readIn } from '../../../corals/basis-words.ts';
import type { SymptomCard } from '../card.ts';

export const whiteSpots: SymptomCard = {
  group: 'pests',
  label: 'White spots or bites on a coral',
  causes: {
    bites: {
      name: 'bites of a fish, crab or shrimp',
      why: 'ragged marks; small shrimps, peppermint shrimps too, feed at night',
      signs: ['new animal', 'animal at it'],
      first:
        'Part the animal you suspect from the coral for a week, or cover the coral with a basket: do new marks come?',
    },
    flatworm: { name: 'flatworms that eat Acropora', why: 'round pale marks, eggs on bare skeleton' },
    slug: { name: 'small white slugs that eat Montipora', why: 'like grains of rice underneath' },
    snail: { name: 'snails', why: 'at the base, at night' },
    growth: { name: 'growth', why: 'pale new tips are normal' },
  },
  questions: [
    {
      ask: 'What do the marks look like?',
      choices: {
        ragged: { label: 'ragged', up: ['bites'], because: 'ragged marks are bites' },
        round: { label: 'round and even', up: ['flatworm'], because: 'round marks are feeding scars' },
        rice: { label: 'white things underneath', up: ['slug'], because: 'something white sits there' },
      },
    },
  ],
  first: 'Blow a jet of water over it and look with a lens, by day and at night.',
  steps: [
    'Watch fish, crabs and shrimps at it, also an hour after dark with a dim red light.',
    'Pests or eggs seen: dip that colony, by the label of a dip made for corals, and keep it apart.',
    'Look for eggs, and scrape or cut them off.',
    'Look again every few days for some weeks.',
  ],
  never: ['Do not trust one dip: eggs live through it.'],
  stop: 'You find them on more and more colonies: ask experienced keepers.',
  published: [
    `Acropora flatworm: eggs hatch in about 11 days and a generation takes 38 at 27 °C, 64 at 24 °C (${readIn('Barton2019')})`,
    `a Montipora-eating slug is described (${readIn('Wang2020')})`,
  ],
  sources: ['practice'],
};
