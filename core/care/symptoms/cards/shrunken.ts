import type { SymptomCard } from '../card.ts';

export const shrunken: SymptomCard = {
  group: 'shape',
  label: 'Flesh shrunken onto the skeleton',
  causes: {
    swing: {
      name: 'a swing of salinity or alkalinity',
      why: 'look at the last two days',
      signs: ['salinity off', 'salinity moved', 'alkalinity moved'],
    },
    flow: { name: 'too much flow', why: 'skeleton edges cut the flesh' },
    sting: { name: 'a sting', why: 'look at night', signs: ['sting'] },
    night: { name: 'its rest at night', why: 'normal in some kinds' },
    picked: {
      name: 'an animal that picks at it',
      why: 'a new fish, crab or shrimp; watch after dark',
      signs: ['new animal'],
    },
    infection: { name: 'an infection', why: 'then jelly or tears show' },
  },
  questions: [
    {
      ask: 'When?',
      choices: {
        night: { label: 'only in the dark', up: ['night'], because: 'many shrink at night' },
        always: { label: 'day and night', down: ['night'], because: 'by day it should be full' },
      },
    },
    {
      ask: 'What changed in two days?',
      choices: {
        water: { label: 'water or dosing', up: ['swing'], because: 'the water was changed' },
        pump: { label: 'a pump or its place', up: ['flow'], because: 'its flow changed' },
        nothing: { label: 'nothing', up: ['sting', 'infection'], because: 'nothing changed' },
      },
    },
  ],
  first: 'Take the flow on it down, and test salinity and alkalinity.',
  steps: ['Check the gap to its neighbours at night.', 'Leave it in peace; feed only when it is full again.'],
  never: ['Do not force food on it.'],
  stop: 'Brown jelly or torn flesh: act today and ask with a photo.',
  sources: ['practice'],
};
