import { palytoxinCleaning } from '../../corals/cautions.ts';
import { PALYTOXIN_BASIS } from '../hurt/palytoxin.ts';
import type { UrgentCard } from './card.ts';

/** Rock and zoanthids that somebody wants to heat, scrub, saw, dose or clean up after. */
export const zoanthidRock: UrgentCard = {
  label: 'Cleaning rock, killing zoanthids',
  first:
    'No heat, saw, dry brush, jet or chemicals on it: they put palytoxin into the air you breathe. Heated rock can burst.',
  steps: [
    'Never boil, bake, microwave, steam or pressure-wash rock. Nobody sees from outside what has lived on it.',
    'Zoanthids you do not want: lift the rock out whole and wet, and give it away or bag it wet for the rubbish.',
    'Gloves, goggles, open windows, no children or pets, not in the kitchen.',
    'Cut only under water.',
    'Pests on that rock: by hand, in a tub of tank water, by the label of a dip made for corals.',
    `${palytoxinCleaning.text}.`,
  ],
  never: [
    'No peroxide, acid, limewater or boiling water on zoanthids: they spray out what they hold.',
    'Do not sweep or vacuum what has dried. Bleach never hot, and never with acid, vinegar or ammonia.',
  ],
  stop: 'A metallic taste, numbness, fever, cough or sore eyes, even hours later: /urgent what:person hurt hurt:palytoxin breathed.',
  published: [PALYTOXIN_BASIS],
  sources: ['practice', 'memory', 'CDC2015', 'Pelin2016', 'Schulz2019', 'Accoroni2016'],
};
