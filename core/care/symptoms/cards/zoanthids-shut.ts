import { PALYTOXIN_BASIS } from '../../hurt/palytoxin.ts';
import { palytoxinLines } from '../../../corals/cautions.ts';
import type { SymptomCard } from '../card.ts';

export const zoanthidsShut: SymptomCard = {
  group: 'shape',
  label: 'Zoanthids closed, shrinking or with white bumps',
  causes: {
    pest: { name: 'pests: tiny slugs, snails or spiders', why: 'look between the polyps at night' },
    algae: { name: 'algae or dirt between the polyps', why: 'it smothers them' },
    pox: { name: 'pale bumps on the stalks', why: 'seen on new ones, cause not known', signs: ['new coral'] },
    picked: {
      name: 'an animal that picks at them',
      why: 'a shrimp, crab or fish keeps them shut, often at night; peppermint shrimps do',
      signs: ['new animal', 'animal at it'],
      first:
        'Watch them after dark with a dim red light for the animal; cover them with a basket for three days and compare.',
    },
    light: {
      name: 'too much light',
      why: 'those in the shade open and those in the light do not',
      signs: ['bright', 'new light'],
      first:
        'Look at the light first: shade one shut colony for three days, and compare it with those that open.',
    },
    water: {
      name: 'a swing of the water',
      why: 'then others shut too',
      signs: ['salinity off', 'salinity moved', 'alkalinity moved', 'hot', 'cold'],
    },
  },
  questions: [
    {
      ask: 'What do you see on them?',
      choices: {
        slugs: { label: 'slugs, eggs or snails', up: ['pest'], because: 'you saw pests' },
        bumps: { label: 'pale bumps', up: ['pox'], because: 'you saw bumps' },
        algae: { label: 'algae', up: ['algae'], because: 'algae stand between them' },
        nothing: { label: 'nothing', up: ['water', 'light', 'picked'], because: 'nothing is on them' },
      },
    },
  ],
  first: 'Gloves and eye protection before you touch them; then look closely for slugs, eggs and bumps.',
  steps: [
    'Swish the rock gently in a tub of tank water, and a dip made for corals by its own label.',
    'Pick algae off by hand, under water.',
    'Test salinity and alkalinity.',
    'Look after dark with a dim red light for a shrimp or crab on them; shade one colony three days and compare.',
  ],
  never: palytoxinLines(),
  stop: 'Any odd feeling in a person (metallic taste, numbness, fever, cough): stop, /urgent what:person hurt.',
  published: [PALYTOXIN_BASIS],
  sources: ['practice'],
  hurt: 'palytoxin breathed',
};
