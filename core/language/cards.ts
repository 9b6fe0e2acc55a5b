import type { Kind } from './kinds.ts';

/** Below some kinds: what exactly is wrong. */
export const cardMeanings = {
  'urgent-water': {
    'power cut': 'no electricity, now or coming',
    'oxygen loss': 'fish at the surface, pumps stopped, air lacking',
    'fire or sparks': 'smoke, burning smell, sparks, melted plug',
    flood: 'water on the floor, leak, burst seam, overflow',
    overheating: 'water too hot, heater stuck on, heat wave',
    'cold water': 'water too cold, heater off',
    ammonia: 'ammonia measured or smelt in a stocked tank',
    overdose: 'too much of an addition went in, by hand or by a machine',
    'limewater ran away': 'limewater in bulk, tank milky, pH high',
    'salinity crash': 'top-off stuck on, much fresh or salt water went in',
    'burst heater': 'broken heater, metal, battery, coin, rust in the water',
    'bleach or spray': 'chlorine, cleaner, paint, aerosol, insecticide, soap, fragrance in or near the water',
    'shredded anemone': 'an anemone, cucumber or nudibranch shredded or dying in the water',
    'out of the water': 'a fish on the floor, a coral or rock left dry',
  },
  'person-hurt': {
    shock: 'electric shock or tingle',
    palytoxin: 'ill after handling, boiling, cutting zoanthids or rock',
    eye: 'lime, acid, addition, peroxide or water in the eye',
    'skin burn': 'caustic, acid or peroxide on the skin',
    swallowed: 'somebody drank or ate something of the tank',
    fumes: 'mixed cleaners, bleach, acid breathed in',
    'spine or sting': 'fish spine, urchin, jelly, anemone, worm bristles',
    cut: 'glass, rock, infected wound',
    'fall or unconscious': 'slipped, fainted, does not answer',
    pet: 'dog, cat, bird harmed',
  },
  'coral-symptom': {
    'pale all over': 'loses colour, bleaches',
    'pale on top': 'pale where the light hits',
    'turns brown': 'browner than before',
    'white tips': 'tips bare or burnt',
    'base recedes': 'flesh draws back from the skeleton, from below or an edge',
    'flesh peels': 'flesh comes off fast, in sheets',
    'brown jelly': 'brown slime on melting flesh',
    'polyps leave': 'heads or polyps let go and drift',
    'leather wax': 'soft coral shut and shiny',
    'zoanthids shut': 'zoanthids closed',
    'polyps closed': 'stays shut, does not open',
    stretched: 'long, reaching, thin',
    shrunken: 'smaller, sucked in',
    slimy: 'mucus, strings, threads from the mouth',
    'brown strings': 'spits out brown threads',
    'anemone off': 'anemone wanders, gapes, shrinks',
    touched: 'stung or overgrown by a neighbour',
    eaten: 'bites, missing flesh',
    'many at once': 'several corals or everything looks bad',
    'use changes': 'takes more or less alkalinity than before',
  },
  'algae-pest': {
    'brown dust': 'diatoms',
    'red slime': 'cyanobacteria',
    'brown snot': 'dinoflagellates, strings with bubbles',
    'green hair': 'hair or turf algae',
    'feather or bubbles': 'other tall algae',
    'flat worms': 'flatworms',
    'glass anemones': 'aiptasia, majano',
    'small animals': 'bugs, snails, worms, crabs, hydroids, unknown guests',
    cloudy: 'cloudy water, film on the surface',
  },
  'fish-ill': {
    'breathes fast': 'gasps, breathes fast',
    spots: 'white spots, dust, patches',
    other: 'does not eat, thin, wound, swims oddly',
  },
} as const satisfies Partial<Record<Kind, Readonly<Record<string, string>>>>;

export type CardKind = keyof typeof cardMeanings;

/** Every card as `kind/card`. */
export const cardNames: readonly string[] = Object.entries(cardMeanings).flatMap(([kind, cards]) =>
  Object.keys(cards).map((card) => `${kind}/${card}`),
);
