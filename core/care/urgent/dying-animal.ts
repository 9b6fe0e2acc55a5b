import type { UrgentCard } from './card.ts';

/** An animal that suffers. Common practice; which home ways hurt is from memory. */
export const dyingAnimal: UrgentCard = {
  label: 'An animal beyond help',
  first:
    'Call a vet who sees fish: a vet can end a life without pain. I give no way and no amount to do it at home.',
  steps: [
    'Until then: quiet, dim light, clean matched water, an air stone, and away from those that pick at it.',
    'Is it beyond help? Post a photo and the readings: fish that lie down or do not eat often recover.',
    'Many vets help by telephone; an animal shelter or public aquarium may know one.',
    'Dead animals come out at once: wrapped, in the rubbish, never into a drain, a lake or the sea.',
    'Then the others: temperature, salinity, ammonia, and how they breathe.',
  ],
  never: [
    'Not the freezer, boiling, flushing, drying out or leaving it in air: all are slow and hurt.',
    'No clove oil, alcohol or soda water by guess: too little wakes up or burns.',
  ],
  stop: 'It gasps, twists or bleeds: a vet today. Several at once: the water first (/urgent what:oxygen loss).',
  sources: ['practice', 'memory'],
};
