import { memory, practice, published, recalled, said, spacingRule } from '../basis.ts';
import type { CoralEntry } from '../entry.ts';
import { byId } from '../selector.ts';

export const galaxea: readonly CoralEntry[] = [
  {
    id: 'galaxea',
    tier: 'core',
    group: 'large-polyp',
    family: { name: 'Euphylliidae', basis: [published('Arrigoni2023')] },
    tags: [],
    names: {
      common: ['Galaxea', 'Galaxy coral', 'Starburst coral', 'Crystal coral'],
      hobby: ['galaxea', 'galaxia', 'tooth coral'],
      misspelt: ['galaxia coral', 'galexea', 'galaxea fasicularis'],
      basis: [practice],
    },
    scientific: {
      accepted: 'Galaxea fascicularis',
      rank: 'species',
      genera: ['Galaxea'],
      superseded: [
        {
          name: 'Galaxea clavus',
          kind: 'older',
          note: 'in older literature',
          now: 'Galaxea fascicularis',
          basis: [memory],
        },
      ],
      species: ['Galaxea fascicularis'],
      basis: [published('CTDB'), published('Arrigoni2023', 'genus')],
    },
    photosynthetic: true,
    light: { lowPpfd: 75, highPpfd: 250, startPpfd: 120, basis: [practice] },
    flow: {
      min: 'medium',
      max: 'medium',
      note: said('Strong one-way flow carries the sweepers further downstream', practice),
      basis: [practice],
    },
    ground: { value: 'rock', basis: [practice] },
    spot: said('isolated rock island, mid tank, nothing downstream', practice),
    form: {
      text: 'encrusting to massive or columnar, many small spiky corallites',
      kinds: ['encrusting', 'massive', 'columnar'],
      basis: [memory],
    },
    shade: { value: false, basis: [memory] },
    moves: { value: 'stays', basis: [memory] },
    sting: {
      potency: 'severe',
      potencyBasis: [practice],
      reachLowCm: 10,
      reachHighCm: 30,
      reachBasis: [practice],
      weapon: 'sweeper tentacles',
      weapons: ['sweepers'],
      when: 'both',
      whenNote: 'mostly at night',
      notes: [
        said('Several inches is usual', practice),
        said(
          'A 30 cm reach circulates in general encyclopaedias; no measured length was seen',
          recalled('general encyclopaedias'),
        ),
        said(
          'Its sweepers carry their own set of stinging cells',
          published('HidakaYamazato1984'),
          published('Yosef2020'),
        ),
      ],
      allies: [
        {
          text: 'same clone only',
          who: byId('galaxea'),
          confidence: 'good',
          basis: [published('HidakaYamazato1984')],
        },
      ],
      atRisk: [
        said('everything else, including other colour morphs of Galaxea', published('HidakaYamazato1984')),
      ],
      keepClearCm: 32,
      keepClearBasis: spacingRule,
    },
    susceptible: [said('brown jelly after damage', recalled('general reports'))],
    size: { practicalMaxCm: 40, basis: [memory], naturalMaxCm: 500, naturalBasis: [published('CTDB')] },
    growth: {
      lowCmPerYear: 1,
      highCmPerYear: 4,
      range: 'recalled',
      basis: [memory],
      notes: [
        said(
          'In culture about one new polyp per polyp per week in small pieces',
          published('GalaxeaFeeding2012'),
        ),
      ],
    },
    stonyDemand: { value: 'medium', basis: [memory] },
    feeding: [
      said('Optional', practice),
      said(
        'Captive growth did not depend on feeding frequency in one study',
        published('GalaxeaFeeding2012'),
      ),
    ],
    hardiness: { value: 'easy', basis: [practice] },
    record: [
      said(
        '98.7-100 % survival over two months in a published culture trial',
        published('GalaxeaFeeding2012'),
      ),
    ],
    depth: { upperM: 1, lowerM: 22, basis: [published('CTDB')] },
    habitat: {
      wave: ['protected'],
      water: ['clear'],
      lifeHistory: ['stress-tolerant'],
      basis: [published('CTDB')],
    },
    hazard: { palytoxin: false, notes: [said('Can sting bare skin', memory)] },
    law: { cites: 'II', citesBasis: [published('CITES2006N063')], notes: [] },
  },
];
