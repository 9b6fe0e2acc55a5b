import type { SymptomCard } from '../card.ts';

export const anemoneOff: SymptomCard = {
  group: 'shape',
  label: 'Anemone wanders, gapes or stays deflated',
  causes: {
    place: {
      name: 'light or flow that does not suit it',
      why: 'it walks until it does',
      signs: ['bright', 'dim'],
    },
    young: { name: 'a young tank', why: 'anemones want a settled one', signs: ['young tank'] },
    water: {
      name: 'salinity or temperature',
      why: 'test both',
      signs: ['salinity off', 'salinity moved', 'hot', 'cold'],
    },
    hurt: { name: 'an injury from a pump', why: 'look for torn edges' },
    purge: { name: 'a normal purge', why: 'it empties itself for some hours' },
  },
  questions: [
    {
      ask: 'How is the mouth?',
      choices: {
        tight: { label: 'tight', up: ['place', 'purge'], because: 'a tight mouth is a good sign' },
        gaping: {
          label: 'gaping',
          up: ['water', 'hurt'],
          because: 'a gaping mouth is a bad sign',
          first: 'Smell it and look at it closely: slime with a foul smell means it has to come out now.',
        },
      },
    },
    {
      ask: 'How long?',
      choices: {
        hours: { label: 'some hours', up: ['purge'], because: 'hours fit a purge' },
        days: { label: 'days', down: ['purge'], because: 'days are too long for a purge' },
      },
    },
  ],
  first: 'Guard every pump and overflow intake now, and leave it to settle.',
  steps: [
    'Test salinity, temperature and ammonia.',
    'No food until it is full again.',
    'Keep corals out of its way while it walks.',
  ],
  never: ['Do not prise its foot off.'],
  stop: 'Gaping with slime and smell: take it out before it fouls the tank, and ask.',
  sources: ['practice'],
  urgent: 'shredded anemone',
};
