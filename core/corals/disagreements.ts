import { practice, published, recalled, said, type Statement } from './basis.ts';
import type { CoralEntry } from './entry.ts';
import { byFamily, byGenus, byId, selects, type Selector } from './selector.ts';

/** Where sources, or source and practice, disagree about a kind; both are kept. */
interface Disagreement extends Statement {
  readonly who: readonly Selector[];
}

export const disagreements: readonly Disagreement[] = [
  {
    who: [byGenus('Goniopora'), byId('plate-coral-fungia', 'cycloseris', 'heliofungia', 'tongue-coral')],
    ...said(
      'Among the most aggressive in one reef survey, mild to moderate in the trade; follow the stronger warning for spacing',
      published('Sheppard1979'),
      practice,
    ),
  },
  {
    who: [byFamily('Fungiidae')],
    ...said(
      'Practice gives plate corals lower flow so that they are not buried; a field survey found that they clear sediment faster in stronger current',
      practice,
      recalled('a student survey'),
    ),
  },
  {
    who: [byGenus('Acropora', 'Isopora')],
    ...said(
      'Acropora loses to faviids in one study and is intermediate in another, but A. hyacinthus and Isopora palifera are among the strongest in a third',
      published('LangmeadChadwick1999'),
      published('Lang1973'),
      published('Sheppard1979'),
    ),
  },
  {
    who: [byId('symphyllia-brain')],
    ...said(
      'Called non-aggressive in one study, while mussid-type corals are top-ranked in published hierarchies',
      published('JMST2013'),
      published('LangmeadChadwick1999'),
    ),
  },
  {
    who: [byId('hammer-coral-wall', 'lobophyllia', 'symphyllia-brain', 'scolymia-australis')],
    ...said(
      'Recorded from exposed places in the wild, while practice keeps it in low to medium flow',
      published('CTDB'),
      practice,
    ),
  },
  {
    who: [byId('elegance-coral')],
    ...said(
      'An encyclopaedia says it likes strong current, the trait database sheltered and turbid water; practice says lower flow, which is kept',
      recalled('general encyclopaedia'),
      published('CTDB'),
      practice,
    ),
  },
  {
    who: [byId('acan-lord', 'scolymia-australis')],
    ...said('Sold as hardy, yet all specimens died in a heat test', practice, published('Pratchett2020')),
  },
  {
    who: [byId('bubble-tip-anemone')],
    ...said(
      'Often said to need very bright light; in the wild it sits in shaded spots in the shallows',
      practice,
      published('Dixon2014'),
    ),
  },
];

/** What the sources differ in about one kind. */
export function disagreementsOn(entry: CoralEntry): readonly Statement[] {
  return disagreements.filter(({ who }) => who.some((one) => selects(one, entry)));
}
