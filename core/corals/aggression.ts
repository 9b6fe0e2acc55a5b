import { byFamily, byGenus, byGroup, byId, byTag, type Selector } from './selector.ts';
import type { CoralSourceKey } from './sources.ts';

/** One end of a ranking: the source's words, and the entries here that it speaks of (none where it names none of ours). */
export interface RankedEnd {
  readonly text: string;
  readonly who: readonly Selector[];
}

/** A published ranking of who harms whom, as far as it was seen. They do not agree, and several hold loops. */
export interface PublishedRanking {
  readonly source: CoralSourceKey;
  readonly where: string;
  readonly strong: RankedEnd;
  readonly weak?: RankedEnd;
  readonly note: string;
}

const faviidOrMussid = byTag('faviid type', 'mussid type');

export const publishedRankings: readonly PublishedRanking[] = [
  {
    source: 'Sheppard1979',
    where: 'Chagos, about 700 observations, 54 species in three classes',
    strong: {
      text: 'most aggressive: free-living fungiids, Galaxea clavus, Acropora palifera (now Isopora), Acropora hyacinthus, Goniopora',
      who: [
        byId('plate-coral-fungia', 'cycloseris', 'heliofungia', 'tongue-coral'),
        byGenus('Galaxea', 'Isopora', 'Goniopora'),
        byId('acropora-table'),
      ],
    },
    weak: {
      text: 'least: Porites, Seriatopora hystrix',
      who: [byGenus('Porites', 'Seriatopora')],
    },
    note: 'No link with shape or family',
  },
  {
    source: 'Dai1990',
    where: 'southern Taiwan, 1168 pairs, five classes by competitive index',
    strong: {
      text: 'most aggressive named: Merulina ampliata, Echinophyllia aspera, Mycedium elephantotus',
      who: [byGenus('Merulina', 'Echinophyllia', 'Mycedium')],
    },
    weak: {
      text: 'soft corals generally lose in contact with stony corals',
      who: [byTag('fleshy soft coral')],
    },
    note: 'Some loops in which each beats the next',
  },
  {
    source: 'AbelsonLoya1999',
    where: 'Eilat, transects',
    strong: { text: 'a ranking exists; the list was not visible', who: [] },
    weak: { text: 'loops mostly among intermediate species', who: [] },
    note: 'Aggression goes with polyp size and distribution, not with abundance',
  },
  {
    source: 'Lang1973',
    where: 'West Indies and Indo-Pacific',
    strong: {
      text: 'strong: mostly faviine massive or encrusting species',
      who: [byTag('faviid type')],
    },
    weak: { text: 'weak: leafy agariciids; Acroporidae intermediate', who: [byFamily('Agariciidae')] },
    note: 'Consistent hierarchy by digestion with filaments',
  },
  {
    source: 'Logan1984',
    where: 'Bermuda',
    strong: { text: 'family ranking close to that of Jamaica', who: [] },
    weak: { text: 'loops among weak species', who: [] },
    note: 'Filaments the main weapon; in 30 % of pairs the field differs from the aquarium, sweepers suspected',
  },
  {
    source: 'FerrizHorta2001',
    where: 'Veracruz',
    strong: { text: 'most: Mussa angulosa', who: [] },
    weak: { text: 'least: Oculina diffusa', who: [] },
    note: 'Two competitive rings',
  },
  {
    source: 'LangmeadChadwick1999',
    where: 'Eilat, a mushroom (Rhodactis rhodostoma) against four families',
    strong: { text: 'faviids and mussids hold it off at 1-3 cm', who: [faviidOrMussid] },
    weak: {
      text: 'Poritidae, Acroporidae and Pocilloporidae damaged, some overgrown; zoanthids overgrown',
      who: [byFamily('Acroporidae', 'Pocilloporidae'), byGenus('Porites'), byGroup('zoanthid')],
    },
    note: 'Restates that the latter rank low and the former top in Indo-Pacific hierarchies',
  },
  {
    source: 'ChadwickFurmanLoya1992',
    where: 'Eilat, seven fungiids',
    strong: {
      text: 'fungiids damage other stony corals one-sidedly',
      who: [byFamily('Fungiidae')],
    },
    note: 'Fungiids do not harm each other; small discs move to 6 cm a day',
  },
  {
    source: 'Precoda2017',
    where: 'field data from five regions',
    strong: { text: 'no single hierarchy overall', who: [] },
    note: 'Polyp size and upward growth help to predict the winner',
  },
];
