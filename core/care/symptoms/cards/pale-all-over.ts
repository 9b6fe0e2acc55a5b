import { readIn } from '../../../corals/basis-words.ts';
import type { SymptomCard } from '../card.ts';

export const paleAllOver: SymptomCard = {
  group: 'colour',
  label: 'Whole coral pale or white, flesh still there',
  causes: {
    light: {
      name: 'light raised too fast, or a stronger lamp',
      why: 'too much light is the commoner harm',
      signs: ['bright', 'new coral', 'new light', 'handled'],
    },
    heat: {
      name: 'water too warm',
      why: 'heat makes corals lose their algae',
      signs: ['hot', 'temperature moved'],
    },
    hungry: {
      name: 'nutrients near zero for weeks',
      why: 'a coral without food fades',
      signs: ['zero', 'light the same'],
      first:
        'Test nitrate, phosphate, temperature and alkalinity first; leave the light as it is, for it was not changed.',
    },
    swing: {
      name: 'a swing of salinity or alkalinity',
      why: 'a sudden change stresses all of it',
      signs: ['salinity off', 'salinity moved', 'alkalinity moved', 'alkalinity high'],
    },
    poison: {
      name: 'something poisonous in the water',
      why: 'rarer, and mostly several corals at once',
      signs: ['dosed'],
    },
  },
  questions: [
    {
      ask: 'One coral, or several?',
      choices: {
        one: {
          label: 'one coral',
          up: ['light'],
          down: ['heat', 'poison', 'swing'],
          because: 'one alone speaks for its place, not for the water',
        },
        several: {
          label: 'several at once',
          up: ['heat', 'swing', 'hungry'],
          because: 'several at once speak for the water',
          first: 'Read temperature and salinity now, with a second instrument if you can.',
        },
      },
    },
    {
      ask: 'What changed in the last weeks?',
      choices: {
        light: { label: 'lamp, hours or place', up: ['light'], because: 'light changed lately' },
        warm: { label: 'it got warm', up: ['heat'], because: 'it was warm' },
        dosing: { label: 'dosing or a water change', up: ['swing'], because: 'the chemistry was changed' },
        nothing: {
          label: 'nothing I know of',
          up: ['hungry'],
          because: 'nothing changed, which leaves slow causes',
        },
      },
    },
  ],
  first:
    'Take the light down by a third to a half, or move it lower or into shade, and hold everything else still.',
  steps: [
    'Bring temperature back into its range slowly, if it is off.',
    'Test salinity, alkalinity, nitrate and phosphate.',
    'Gentle flow, and a little food now and then.',
    'Then change nothing for a week. Flesh that is pale but there can recover over weeks.',
  ],
  never: [
    'Do not raise the light to help it.',
    'Do not dip a bleached coral.',
    'No large corrections in one day.',
  ],
  stop: 'Many corals at once, or above 29 °C: ask an experienced keeper or an aquatic vet the same day.',
  published: [
    `heat: stress begins about 1 °C above the warmest usual month, bleaching is likely at 4 degree heating weeks (${readIn('NOAACRW')})`,
  ],
  sources: ['practice'],
  urgent: 'overheating',
};
