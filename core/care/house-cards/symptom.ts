import type { SymptomId } from '../symptoms/cards.ts';
import { ZOA, type Way, type Ways } from './way.ts';

const OTHER_CORAL = [
  'corals.euphyllia',
  'corals.flowerpot',
  'corals.brain',
  'corals.fleshyLps',
  'corals.branchLps',
  'corals.mushroom',
  'corals.acropora',
  'corals.montipora',
] as const;

const ANEMONE: Way<SymptomId> = { card: 'anemone off', if: ['animals.anemone'] };
const ZOA_SHUT: Way<SymptomId> = { card: 'zoanthids shut', if: ZOA };

/** A fish that is ill in a way that none of these words tells of has no card. */
export const symptomWays: Ways<'coral-symptom' | 'algae-pest' | 'fish-ill', SymptomId> = {
  'pale all over': [ANEMONE, { card: 'pale all over' }],
  'pale on top': [{ card: 'pale on top' }],
  'turns brown': [{ card: 'turns brown' }],
  'white tips': [{ card: 'white tips' }],
  'base recedes': [{ card: 'base recedes' }],
  'flesh peels': [{ card: 'flesh peels' }],
  'brown jelly': [{ card: 'brown jelly' }],
  'polyps leave': [{ card: 'polyps float' }],
  'leather wax': [
    { card: 'waxy leather', if: ['corals.softCoral'] },
    { card: 'polyps closed', if: OTHER_CORAL },
    { card: 'waxy leather' },
  ],
  'zoanthids shut': [
    ZOA_SHUT,
    { card: 'polyps closed', if: ['corals.softCoral', ...OTHER_CORAL] },
    { card: 'zoanthids shut' },
  ],
  'polyps closed': [ANEMONE, ZOA_SHUT, { card: 'polyps closed' }],
  stretched: [{ card: 'stretched' }],
  shrunken: [ANEMONE, ZOA_SHUT, { card: 'shrunken' }],
  slimy: [{ card: 'slimy' }],
  'brown strings': [{ card: 'brown strings', if: ['animals.dinos'] }, { card: 'slimy' }],
  'anemone off': [{ card: 'anemone off' }],
  touched: [{ card: 'dead strip' }],
  eaten: [{ card: 'white spots' }],
  'many at once': [{ card: 'many at once' }],
  'use changes': [{ card: 'alkalinity use' }],
  'brown dust': [{ card: 'brown dust' }],
  'red slime': [{ card: 'red slime' }],
  'brown snot': [{ card: 'brown strings' }],
  'green hair': [{ card: 'green hair' }],
  'feather or bubbles': [{ card: 'feather algae' }],
  'flat worms': [{ card: 'flatworms' }],
  'glass anemones': [{ card: 'glass anemones' }],
  'small animals': [
    { card: 'glass anemones', if: ['animals.aiptasia', 'animals.majano'] },
    { card: 'small bugs' },
  ],
  cloudy: [
    { card: 'surface film', if: ['looks.film', 'events.foams', 'poisons.oil'], unless: ['events.cloudy'] },
    { card: 'cloudy' },
  ],
  'breathes fast': [{ card: 'fish gasping' }],
  spots: [{ card: 'fish spots' }],
  other: [
    { card: 'fish swims oddly', if: ['lives.listless', 'lives.toppled', 'body.dizzy'] },
    { card: 'fish thin', if: ['lives.refuses'] },
    {
      card: 'fish wound',
      if: [
        'lives.fights',
        'lives.nipped',
        'body.eye',
        'body.cutMyself',
        'body.bled',
        'looks.lump',
        'fish.fishDisease',
      ],
    },
  ],
};
