import type { SymptomCard } from '../card.ts';

export const fishSwimsOddly: SymptomCard = {
  group: 'fish',
  label: 'Fish on its side, spinning or drifting',
  causes: {
    water: { name: 'bad water or too little oxygen', why: 'several at once', signs: ['hot', 'ammonia'] },
    knock: { name: 'a knock, a jump or rough handling', why: 'after a net, a bucket, a fright or a fight' },
    bladder: { name: 'its swim bladder', why: 'floats, or sinks tail or head down' },
    illness: { name: 'an illness of gills, gut or nerves', why: 'with fast breathing, spots or no appetite' },
    rest: { name: 'sleep or fright', why: 'some wrasses and triggers lie down, when new above all' },
  },
  questions: [
    {
      ask: 'All fish, or one?',
      choices: {
        all: { label: 'several', up: ['water'], because: 'several at once speak for the water' },
        one: { label: 'one', down: ['water'], because: 'one alone speaks for the fish' },
      },
    },
    {
      ask: 'Before that?',
      choices: {
        moved: {
          label: 'caught, moved, jumped or fought',
          up: ['knock', 'bladder'],
          because: 'it was handled or hurt before',
        },
        fast: {
          label: 'fast breathing, spots, no food',
          up: ['illness'],
          because: 'other signs of illness came with it',
        },
        nothing: { label: 'nothing seen', up: ['rest', 'water'], because: 'nothing was seen before it' },
      },
    },
  ],
  first:
    'Move the surface more now, and read temperature, salinity and ammonia; leave the fish in the tank for now.',
  steps: [
    'Several at once, or gasping: that is the water. Do not wait (/urgent what:oxygen loss).',
    'Light down, pump intakes guarded; a mesh box in gentle flow if others pick at it or flow throws it about.',
    'Food within its reach, little at a time. Count its breaths and film it: vets see more than words say.',
  ],
  never: ['No medicine, no bath in fresh water, and no needle into a swollen belly.'],
  stop: 'Still so after some hours, breathing fast or not eating: a vet who knows fish.',
  sources: ['practice'],
  urgent: 'oxygen loss',
};
