import { lightBandWords } from '../../light/band.ts';
import { readIn } from '../../corals/basis-words.ts';
import type { Primer } from './primer.ts';

/** Light in PAR (umol m-2 s-1): words are a project rule, paces common practice; papers as named in core/corals/sources.ts. */
export const animalCards: readonly Primer[] = [
  {
    id: 'first corals',
    names: [
      'first coral',
      'choosing corals',
      'beginner corals',
      'easy corals',
      'starter corals',
      'beginner coral',
    ],
    headline: 'Begin with one or two hardy soft corals, and only when the tank has been steady for weeks.',
    points: [
      ['Ready', 'ammonia and nitrite zero, salinity and temperature steady, some nitrate and phosphate'],
      ['Good starts', 'mushrooms, toadstools, green star polyps on a rock of their own'],
      ['Later', 'branching large-polyp corals; small-polyp corals after a steady year (common practice)'],
      ['Ask', 'how big it gets, how far it stings, what light it came from'],
    ],
    steps: [
      'Choose healed, open pieces without brown jelly or pests.',
      'Add one, wait two weeks, test alkalinity.',
    ],
    cautions: ['Zoanthids are easy but can hold a dangerous poison.'],
    see: ['cycle', 'where corals come from', 'room to grow', 'palytoxin'],
    sources: ['practice'],
  },
  {
    id: 'where corals come from',
    names: [
      'aquacultured',
      'maricultured',
      'wild corals',
      'tank grown',
      'tank-grown',
      'captive grown',
      'wild coral',
    ],
    headline:
      'Ask for tank-grown pieces: they spare the reef and already live with lamps, pumps and fish food.',
    points: [
      [
        'Tank-grown',
        'cut from a colony in a tank; usually sturdiest, starts near its usual light (common practice)',
      ],
      ['Sea-farmed', 'grown on racks in the sea; may bring hitchhikers; start lower'],
      ['Wild', `slowest to settle; light needs follow the depth it grew at (${readIn('Chalker1983')})`],
      ['Law', `stony corals are listed (${readIn('CITES2006N063')}): keep papers when they cross borders`],
    ],
    steps: [
      'Ask where it grew and for how long, and its light.',
      'Trade cuttings in your club.',
      'Never collect, and never release into the sea.',
    ],
    see: ['first corals', 'acclimation', 'dips and quarantine'],
    sources: ['practice'],
  },
  {
    id: 'acclimation',
    names: ['acclimate', 'acclimating', 'acclimatise', 'acclimatize', 'new coral', 'drip acclimation'],
    headline:
      'Match temperature, then salinity, then light: the first two take an hour, the third takes weeks.',
    points: [
      ['Temperature', 'float the closed bag 15 to 20 minutes (common practice)'],
      ['Salinity', 'measure the bag; within 1 ppt move on, else drip for up to an hour'],
      ['Long trips', 'once the bag is open ammonia turns more harmful: be quick with fish'],
      ['Light', 'start one band low for 1 to 2 weeks, then about 10 % more a week'],
    ],
    steps: [
      'Dip and look it over before it goes in.',
      'Do not pour the bag water into the tank.',
      'Leave it alone: shut for some days is usual.',
    ],
    see: ['dips and quarantine', 'PAR', 'where corals come from'],
    sources: ['practice'],
  },
  {
    id: 'dips and quarantine',
    names: ['dip', 'dipping', 'quarantine', 'coral dip', 'dips', 'pests', 'qt'],
    headline:
      'Look at every new coral and keep it apart for weeks: a dip kills crawling pests, but seldom their eggs.',
    points: [
      ['Dip', 'use a product made for corals, exactly by its label, in a tub, never in the tank'],
      ['Eggs', 'scrape them off; cut the old plug or base away'],
      ['Apart', 'a small tank with heat, light and flow; 4 to 6 weeks, longer for fish (common practice)'],
    ],
    steps: [
      'Look by torchlight at night, too.',
      'Dip again after a week if you found something.',
      'Own nets and tubs for it.',
    ],
    cautions: [
      'Gloves and eye protection; boil or scrub no zoanthid rock.',
      'I give no doses: the label decides. For sick fish ask a vet.',
    ],
    see: ['acclimation', 'palytoxin', 'where corals come from'],
    sources: ['practice'],
  },
  {
    id: 'room to grow',
    names: ['spacing', 'sting', 'stinging', 'sweepers', 'sweeper tentacles', 'placement', 'aggression'],
    headline:
      'Leave room for the reach at full stretch and for a year of growth: many corals sting farther by night than you see by day.',
    points: [
      ['Sweepers', 'long stinging arms, often at night, that travel with a one-way stream'],
      [
        'Chemistry',
        `soft corals can harm stony ones near them (${readIn('Griffith1997')}); keep 10 cm and run carbon`,
      ],
      ['Shade', 'tables and plates darken what is below'],
      ['Own kind', 'some may touch, many may not: ask for the pair'],
    ],
    steps: [
      'Place fast spreaders on a rock of their own.',
      'Measure the gap downstream.',
      'Look an hour after lights out.',
    ],
    see: ['first corals', 'flow', 'PAR'],
    sources: ['practice'],
  },
  {
    id: 'PAR',
    names: ['light', 'ppfd', 'lighting', 'lux', 'dli', 'lights'],
    headline:
      'PAR counts the light a coral can use; too much harms more often than too little, so start low.',
    points: [
      ['Words', `${lightBandWords} (project rule)`],
      ['Day', 'PAR x hours x 0.0036 is the day’s light: 200 for 8 h is 5.8 mol'],
      ['Lux', 'no one divisor makes PAR of it: 7 for blue, 70 for white'],
      ['Watts', 'say nothing about the light at the coral'],
    ],
    steps: ['Borrow a quantum meter and note three spots.', 'Raise by about 10 % a week (common practice).'],
    cautions: ['Pale flesh or white patches facing the lamp: lower it now. Stretched flesh: too dim.'],
    see: ['acclimation', 'first corals', 'room to grow'],
    sources: ['practice', 'dli', 'cie', 'cie15'],
  },
  {
    id: 'flow',
    names: ['water flow', 'turnover', 'current', 'wavemaker', 'circulation'],
    headline:
      'Flow brings food and air and carries waste away: soft flesh moves gently in it and is never pressed flat.',
    points: [
      ['Random', 'better than one hard stream: alternate, bounce it off glass or rock'],
      [
        'Turnover',
        '10 to 20 times the tank an hour for soft corals, 40 or more for small-polyp ones (common practice)',
      ],
      ['Too little', 'detritus settles on flesh, slime grows'],
      ['Too much', 'flesh stays in or bare skeleton shows on one side'],
    ],
    steps: [
      'Blow out dead corners weekly.',
      'Turn pumps down to feed, and back up.',
      'Guard intakes from anemones.',
    ],
    see: ['room to grow', 'feeding', 'water and mains'],
    sources: ['practice'],
  },
  {
    id: 'feeding',
    names: ['feed', 'coral food', 'feeding corals', 'food'],
    headline:
      'Light feeds most corals; small meals help many, and every gram ends up as nitrate and phosphate.',
    points: [
      ['Who', 'large-polyp corals like a small meaty bite weekly; soft corals catch dust (common practice)'],
      ['How much adds', '1 g of flakes in 100 L: at most 2.6 to 3.7 mg/L nitrate (shares from memory)'],
      ['Signs', 'feeders out at dusk; food taken within minutes'],
    ],
    steps: [
      'Pumps down, feed by pipette, wait, pumps up.',
      'Keep shrimps and fish from stealing.',
      'Take leftovers out.',
      'Feed little, and follow nitrate for a week.',
    ],
    cautions: ['Not fed is not starved: hungry water, at zero nitrate and phosphate, does more harm.'],
    see: ['nutrients', 'flow', 'first corals'],
    sources: ['practice', 'memory', 'iupac21'],
  },
];
