import { memory, practice, published, recalled, type Bases } from './basis.ts';
import { anyCoral, byFamily, byGenus, byGroup, byId, byTag, type Selector } from './selector.ts';

/**
 * What two neighbours do: `tolerated` (may touch), `usually tolerated`, `stand-off` (each holds the other off),
 * `uncertain`, `watch` (harm is possible), `keep apart`, `never close`.
 */
export type PairEffect =
  'tolerated' | 'usually tolerated' | 'stand-off' | 'uncertain' | 'watch' | 'keep apart' | 'never close';

/**
 * A rule for two neighbours, in either order. `effectBasis` is about what happens, `gapBasis` about the number:
 * a paper that shows who wins seldom gives a distance, so most gaps are this project's own.
 */
export interface PairRule {
  readonly a: Selector;
  readonly b: Selector;
  readonly effect: PairEffect;
  /** The side that is harmed, where one is known to be. */
  readonly loser?: 'a' | 'b';
  /** Least gap between them at full stretch, cm; 0 means they may touch. */
  readonly gapCm: number;
  readonly effectBasis: Bases;
  readonly gapBasis: Bases;
  readonly note?: string;
}

const ownGap: Bases = [{ kind: 'project rule', note: 'reach and growth room, rounded; no source gives it' }];
const faviidOrMussid = byTag('faviid type', 'mussid type');
const smallPolypLosers = byGenus(
  'Acropora',
  'Isopora',
  'Anacropora',
  'Montipora',
  'Pocillopora',
  'Seriatopora',
  'Stylophora',
  'Porites',
);
/** Seen for seven free-living kinds; the rest of the family is judged by them. */
const mushroomCorals: Bases = [
  published('ChadwickFurmanLoya1992', 'seven free-living kinds at Eilat'),
  recalled('the rest of the family, judged by them'),
];
const stony = byGroup('large-polyp', 'small-polyp');

/** A rule that is all common practice, the gap too. */
function practiceRule(a: Selector, b: Selector, effect: PairEffect, gapCm: number, note?: string): PairRule {
  const rule = { a, b, effect, gapCm, effectBasis: [practice], gapBasis: [practice] } as const;
  return note === undefined ? rule : { ...rule, note };
}

/** A rule that is all from memory. */
function memoryRule(a: Selector, b: Selector, effect: PairEffect, gapCm: number): PairRule {
  return { a, b, effect, gapCm, effectBasis: [memory], gapBasis: [memory] };
}

export const pairRules: readonly PairRule[] = [
  practiceRule(
    byTag('hammer'),
    byTag('frogspawn', 'octospawn'),
    'usually tolerated',
    3,
    'Same genus; watch the first nights',
  ),
  {
    a: byTag('torch'),
    b: byTag('hammer', 'frogspawn', 'octospawn'),
    effect: 'keep apart',
    loser: 'b',
    gapCm: 20,
    effectBasis: [practice],
    gapBasis: [practice],
    note: 'Different genus; torches often win',
  },
  practiceRule(byTag('torch'), byTag('torch'), 'usually tolerated', 3),
  practiceRule(byGenus('Galaxea'), anyCoral, 'never close', 30, 'Downstream distance counts most'),
  {
    a: byGenus('Galaxea'),
    b: byGenus('Galaxea'),
    effect: 'keep apart',
    gapCm: 15,
    effectBasis: [published('HidakaYamazato1984', 'Galaxea fascicularis')],
    gapBasis: ownGap,
    note: 'Between colour morphs: some pairs kill, some stand off; pieces of one colony fuse',
  },
  practiceRule(byGenus('Hydnophora'), anyCoral, 'never close', 15),
  practiceRule(byId('elegance-coral', 'bubble-coral', 'heliofungia'), anyCoral, 'keep apart', 15),
  {
    a: byTag('chalice'),
    b: anyCoral,
    effect: 'keep apart',
    gapCm: 15,
    effectBasis: [practice, published('Dai1990', 'strength of Echinophyllia and Mycedium')],
    gapBasis: [practice],
    note: 'Other chalices too; plan for the shade as well',
  },
  practiceRule(
    byGenus('Dipsastraea', 'Favites', 'Goniastrea'),
    anyCoral,
    'keep apart',
    12,
    'Sweepers at night',
  ),
  {
    a: byGenus('Platygyra'),
    b: byGenus('Favites', 'Leptastrea'),
    effect: 'keep apart',
    loser: 'b',
    gapCm: 12,
    effectBasis: [
      published('Lapid2004', 'Platygyra daedalea'),
      published('LapidChadwick2006', 'Favites complanata'),
    ],
    gapBasis: ownGap,
  },
  {
    a: byGenus('Platygyra'),
    b: byGenus('Millepora', 'Platygyra'),
    effect: 'watch',
    gapCm: 6,
    effectBasis: [published('Lapid2004', 'Platygyra daedalea')],
    gapBasis: ownGap,
    note: 'Significantly less damage than to others',
  },
  {
    a: byFamily('Fungiidae'),
    b: byFamily('Fungiidae'),
    effect: 'tolerated',
    gapCm: 0,
    effectBasis: mushroomCorals,
    gapBasis: mushroomCorals,
  },
  {
    a: byFamily('Fungiidae'),
    b: stony,
    effect: 'keep apart',
    loser: 'b',
    gapCm: 8,
    effectBasis: mushroomCorals,
    gapBasis: ownGap,
    note: 'Stony corals of other families; the free-living ones walk',
  },
  {
    a: faviidOrMussid,
    b: smallPolypLosers,
    effect: 'keep apart',
    loser: 'b',
    gapCm: 12,
    effectBasis: [
      published('LangmeadChadwick1999', 'restated there for Acroporidae, Pocilloporidae and Poritidae'),
    ],
    gapBasis: ownGap,
    note: 'The small-polyp side loses',
  },
  {
    a: byId('acropora-table', 'isopora'),
    b: stony,
    effect: 'watch',
    gapCm: 8,
    effectBasis: [published('Sheppard1979', 'Acropora hyacinthus, Isopora palifera')],
    gapBasis: ownGap,
    note: 'Do not assume it harmless',
  },
  {
    a: byGenus('Goniopora'),
    b: stony,
    effect: 'keep apart',
    gapCm: 15,
    effectBasis: [published('Sheppard1979'), { kind: 'practice', note: 'practice calls it milder' }],
    gapBasis: ownGap,
    note: 'Long polyps lean on neighbours',
  },
  {
    a: byGenus('Rhodactis'),
    b: smallPolypLosers,
    effect: 'keep apart',
    loser: 'b',
    gapCm: 6,
    effectBasis: [published('LangmeadChadwick1999', 'Rhodactis rhodostoma')],
    gapBasis: ownGap,
  },
  {
    a: byGenus('Rhodactis'),
    b: byGroup('zoanthid'),
    effect: 'keep apart',
    loser: 'b',
    gapCm: 6,
    effectBasis: [published('LangmeadChadwick1999', 'Rhodactis rhodostoma')],
    gapBasis: ownGap,
  },
  {
    a: byGenus('Rhodactis'),
    b: faviidOrMussid,
    effect: 'stand-off',
    gapCm: 3,
    effectBasis: [published('LangmeadChadwick1999', 'Rhodactis rhodostoma')],
    gapBasis: [published('LangmeadChadwick1999', 'stand-offs at 1 to 3 cm')],
  },
  {
    a: byTag('fleshy soft coral'),
    b: byGroup('small-polyp'),
    effect: 'keep apart',
    gapCm: 10,
    effectBasis: [published('Griffith1997', 'soft corals of the leather kinds')],
    gapBasis: [
      practice,
      published('Griffith1997', 'most corals within 10 cm were interacting to the harm of one or both'),
    ],
    note: 'Run activated carbon',
  },
  {
    a: byTag('fleshy soft coral'),
    b: stony,
    effect: 'keep apart',
    gapCm: 10,
    effectBasis: [
      published('Dai1990', 'the soft side usually loses in contact'),
      published('Griffith1997', 'overgrowth by soft corals too'),
    ],
    gapBasis: [
      practice,
      published('Griffith1997', 'most corals within 10 cm were interacting to the harm of one or both'),
    ],
    note: 'In contact the soft side usually loses; the sources differ',
  },
  {
    a: byGenus('Discosoma'),
    b: byId('pavona', 'leptoseris', 'pachyseris'),
    effect: 'keep apart',
    loser: 'b',
    gapCm: 5,
    effectBasis: [
      published('Miles1991', 'Caribbean Discosoma beside Agaricia'),
      recalled('the Pacific kinds, judged by them'),
    ],
    gapBasis: ownGap,
  },
  practiceRule(byGenus('Blastomussa'), byGenus('Micromussa'), 'keep apart', 7),
  practiceRule(byGenus('Blastomussa'), byGroup('zoanthid'), 'keep apart', 7),
  memoryRule(byGenus('Micromussa'), byGenus('Micromussa'), 'uncertain', 5),
  memoryRule(byGenus('Acropora'), byGenus('Acropora'), 'stand-off', 3),
  memoryRule(byGenus('Montipora'), byGenus('Montipora'), 'tolerated', 0),
  practiceRule(byGroup('zoanthid'), byGroup('zoanthid'), 'tolerated', 0, 'One may overgrow the other'),
  practiceRule(
    byTag('walking anemone'),
    anyCoral,
    'never close',
    25,
    'Its own rock island, and guards on the pump intakes',
  ),
];
