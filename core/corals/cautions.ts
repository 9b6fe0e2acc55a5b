import { memory, practice, published, recalled, said, spacingRule, type Statement } from './basis.ts';

/** Rules that hold for any coral. Light in umol m-2 s-1, called PAR; its bands are in `core/light/band.ts`. */
export const generalRules: readonly Statement[] = [
  said('Most large-polyp stony corals: 50-200 PAR; just over 100 is a safe start', practice),
  said(
    'More light is not better; too much harms far more often than too little. Start low, raise slowly',
    practice,
    published('Tagliafico2022', 'shade effects, abstract'),
    published('DiPerna2018'),
  ),
  said('Flow: flesh should sway, never be blasted; vary it', practice),
  said(
    'Light needs follow the light a coral grew in: compensation and saturation light both fell steadily from 1 to 45 m depth (82.6 to 2.9 % of surface light) on the Great Barrier Reef',
    published('Chalker1983'),
  ),
  said('A new coral starts one band lower than its target for 1-2 weeks', practice),
  said('Wild pieces and pieces from dim tanks start lower than tank-grown pieces', practice),
  said('Sweepers travel with one-way flow; measure the gap downstream', practice),
  {
    text: 'The spacing figure is reach at full stretch plus growth room for a year, rounded',
    basis: spacingRule,
  },
  said(
    'Soft corals and stony corals: run carbon, keep at least 10 cm',
    practice,
    published('Griffith1997', 'harm was common within 10 cm'),
  ),
  said('Plating and table corals: plan for the shade they will cast in a year', practice),
  said(
    'Branching Euphyllia types: 1-2 heads become about six in a year, then growth is roughly exponential',
    practice,
  ),
  said('Wall forms are riskier than branching: an infection can take the whole head', practice),
];

/** Where sources, or source and practice, disagree; both are kept. */
export const contradictions: readonly Statement[] = [
  said(
    'Goniopora and free-living fungiids are among the most aggressive in one reef survey, but the trade calls them mild to moderate; follow the stronger warning for spacing',
    published('Sheppard1979'),
    practice,
  ),
  said(
    'Fungiids do not harm each other, yet damage other stony corals one-sidedly',
    published('ChadwickFurmanLoya1992'),
  ),
  said(
    'Acropora loses to faviids in one study and is intermediate in another, but A. hyacinthus and Isopora palifera are among the strongest in a third',
    published('LangmeadChadwick1999'),
    published('Lang1973'),
    published('Sheppard1979'),
  ),
  said(
    'Soft corals lose to stony corals on contact in one study; another finds overgrowth and chemical harm by soft corals; the position of contact matters',
    published('Dai1990'),
    published('Griffith1997'),
  ),
  said(
    'The former Symphyllia is called non-aggressive in one study, while mussid-type corals are top-ranked in published hierarchies',
    published('JMST2013'),
    published('LangmeadChadwick1999'),
  ),
  said(
    'Wall hammer, Lobophyllia, the former Symphyllia and Homophyllia australis are recorded from exposed places, while practice keeps them in low to medium flow',
    published('CTDB'),
    practice,
  ),
  said(
    'A general encyclopaedia says elegance likes strong current; the trait database says sheltered, turbid water; practice says lower flow, which is kept',
    recalled('general encyclopaedia'),
    published('CTDB'),
    practice,
  ),
  said(
    'Plate corals: practice says lower flow so they are not buried; a field survey found them gathered in lower current but clearing sediment faster in stronger current',
    practice,
    recalled('a student survey'),
  ),
  said(
    'Growth: Hydnophora 6.3 mm per year (massive) and 71 (branching); Favites one value of 0.8; Platygyra 6.4-22; genus averages mislead',
    published('CTDB'),
  ),
  said(
    'The trait database has doubtful diameters (Pachyseris speciosa 2 cm, Trachyphyllia 8 cm); used only as flagged',
    published('CTDB'),
  ),
  said(
    'Acan lord and scoly are sold as hardy, but all heat-treated specimens died in a heat test; duncan and open brain did better',
    practice,
    published('Pratchett2020'),
  ),
  said(
    'The bubble-tip anemone is often said to need very bright light; in the wild it sits in shaded spots in the shallows',
    practice,
    published('Dixon2014'),
  ),
  said(
    'The mean least light over reef areas, 450 umol m-2 s-1, is a surface average and sets no care value',
    published('Guan2015'),
  ),
  said(
    'A leather grew no differently at 50-120 PAR, while guides often ask for high light',
    published('Rocha2013'),
    practice,
  ),
  said(
    'Octospawn may be Fimbriaphyllia yaeyamaensis or another species; many Blastomussa wellsi are B. vivida; finger leathers are mostly Sclerophytum now',
    recalled('octospawn'),
    published('Benzoni2014', 'Blastomussa'),
    published('OctoList2024', 'Sclerophytum'),
  ),
];

/** To be shown for every entry whose `hazard.palytoxin` is true, before anything else. */
export const palytoxinCaution: Statement = said(
  'May hold palytoxin. Wear gloves and eye protection. Never boil, bake, steam, microwave, saw, scrub dry or pressure-wash rock with zoanthids. Keep it wet, out of cuts and eyes and away from pets. Ill after handling: fresh air, call a doctor or a poison centre and say palytoxin',
  published('CDC2015'),
  published('Pelin2016'),
  published('Schulz2019'),
);

/**
 * How what zoanthids leave behind is made harmless. Guidance of public health after the published cases, recalled and not
 * read again; living coral and tanks are never bleached.
 */
export const palytoxinCleaning: Statement = said(
  'Afterwards, on surfaces, tools and dead rock: 1 part fresh household bleach to about 10 of cold water, 30 minutes, then rinse (public-health guidance, from memory)',
  recalled('public-health guidance on palytoxin'),
);

/** People and law. No legal advice: local rules come first. */
export const peopleAndLaw: readonly Statement[] = [
  said(
    'Zoanthids and some Ostreopsis slime can carry palytoxin. In a 2014 case in Alaska symptoms came 7-8 hours after adding live zoanthids: bitter metallic taste, fever, weakness, cough, muscle pain',
    published('CDC2015'),
    published('Accoroni2016', 'Ostreopsis'),
  ),
  said('Fire coral: burning pain mostly 30-90 minutes, marks 3-7 days', published('VAPAGuide')),
  said(
    'CITES Appendix II covers stony corals, blue coral, organ pipe, fire corals and lace corals',
    published('CITES2006N063'),
  ),
  said(
    'Soft corals, zoanthids, mushrooms and anemones are not in that list; local collection rules may still apply',
    memory,
  ),
  said('Coral sand and small gravel are treated apart', published('CITESAC22')),
  said(
    'Five Caribbean and fifteen Indo-Pacific corals are listed as threatened under the US Endangered Species Act since 2014; its take ban applies by itself only to endangered species',
    published('NOAA2014'),
  ),
  said('Never release anything: sun coral is invasive in the western Atlantic', memory),
];
