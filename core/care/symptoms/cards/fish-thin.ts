import type { SymptomCard } from '../card.ts';

export const fishThin: SymptomCard = {
  group: 'fish',
  label: 'Fish thin or not eating',
  causes: {
    food: { name: 'food it cannot live on', why: 'mandarins and other pickers need small live food all day' },
    others: { name: 'others keep it from food', why: 'it hides or is chased when food comes' },
    new: { name: 'new, or just moved', why: 'many eat nothing for the first days' },
    worms: { name: 'worms or another gut parasite', why: 'thin though it eats, white stringy droppings' },
  },
  questions: [
    {
      ask: 'What does it do with food?',
      choices: {
        eats: {
          label: 'eats, and gets thin',
          up: ['worms', 'food'],
          because: 'thin though it eats fits worms or too little food',
        },
        refuses: { label: 'does not touch it', up: ['food', 'new'], because: 'it does not take this food' },
        late: { label: 'does not get to it', up: ['others'], because: 'it does not get to the food' },
      },
    },
    {
      ask: 'Its droppings?',
      choices: {
        white: { label: 'white and stringy', up: ['worms'], because: 'white strings speak for the gut' },
        usual: { label: 'as usual, or not seen', down: ['worms'], because: 'the droppings say nothing' },
      },
    },
  ],
  first:
    'Small food several times a day: live or frozen copepods, brine shrimp or mysis, where the others do not get it.',
  steps: [
    'Mandarin, pipefish, leopard wrasse: live copepods now, for it picks all day. A bare rock does not feed it.',
    'Feed the others first, at the far end; a mesh box or a feeding jar for the thin one.',
    'Read temperature and salinity, test ammonia, and look how it breathes.',
  ],
  never: ['No wormer or other medicine into the reef: many kill shrimps, snails and worms.'],
  stop: 'A hollow belly, a knife-thin back or lying down: a vet who knows fish or experienced keepers today. Any treatment and its dose come from them and the label.',
  sources: ['practice'],
};
