import { saidIn, type Way } from '../../said.ts';
import type { UrgentId } from '../cards.ts';

const ZOA = String.raw`(?:zoas?|zoo?[ae]nth\w*|palys?|palyth?oas?|palythoas?|button polyps?)`;
const ROCK = String.raw`(?:${ZOA}|(?:live |dry |reef |base |dead )?rocks?|rock ?work|frag (?:plugs?|rocks?)|coral skeletons?)`;
const OTHER_PEST = [
  'aiptasia',
  'majanos?',
  'algae',
  'nudi\\w*',
  'bryopsis',
  'spiders?',
  'flat ?worms?',
] as const;
/** Medicines for fish by kind and by generic name. */
export const MEDICINES = [
  'medicines?',
  'medications?',
  'medicat(?:e|ed|ing)',
  '(?:fish|ich|reef|vet) meds?',
  'meds',
  'antibiotics?',
  'dewormers?',
  'antiparasitics?',
  String.raw`\w+(?:m[yi]cin|cycline|cillin|oxacin|quantel|ectin|azole|quine|misole|benzuron|zuril|(?:ph|f)enicol|furantoin|furazone|sulfone)`,
  String.raw`[a-z]{4,}prim`,
  'nystatin',
  String.raw`(?:ceph|cef)[a-z]+(?:in|ime|one|or)`,
  'ms[- ]?222',
  'tricaine',
  'eugenol',
  'clove oil',
  'prazi',
  'doxy',
  String.raw`sul(?:f|ph)a(?!t)\w*`,
  'nitrofur\\w*',
  'furan\\w*',
  'formalin',
  'formaldehyde',
  'malachite(?: green)?',
  'methylene blue',
  'acriflavine',
  'potassium permanganate',
  'iodine dip',
  'copper (?:sulfate|sulphate|treatment|medication|medicine|meds?)',
  'chelated copper',
  'trichlorfon',
  'organophosphates?',
  'antifungals?',
  'steroids?',
  'dexamethasone',
] as const;
const COPPER = String.raw`copper(?! ?band| ?colou?r| ?penn| ?coins?)`;
/** Copper that was measured: any number is too much in a reef. */
const COPPER_READS = String.raw`${COPPER}(?: (?:is|was|at|of|in|the|my|tank|water|level|reads?|reading|shows?|shown|tests?|tested|came|back|now|=|around|about)){0,6}[ :=]*[<>~]? ?\d*[.,]?\d+(?! ?(?:mg|g|ml|drops?|cl)(?! ?/ ?l)(?![a-z]))`;
/** Copper as a cure: an amount, not a finding. */
export const CURE = [
  'treat\\w*',
  'dos(?:e|es|ed|ing|age)',
  'how much',
  'quarantine',
  'qt',
  'hospital',
  'ich',
  'velvet',
  'for (?:\\w+ ){1,2}(?:weeks?|days?|month)',
  '\\d+ (?:weeks?|days?)',
  'therap\\w*',
] as const;
/** Then its number is a trace, or of a volume. */
const NO_FINDING = [
  ...CURE,
  'ug',
  'µg',
  'ppb',
  'icp',
  'natural\\w*',
  'sea ?water',
  'ocean',
  'gallons?',
  'gal',
  'should be',
] as const;
const OF_REEF = [
  'reef\\w*',
  'display',
  'corals?',
  'shrimps?',
  'invert\\w*',
  'snails?',
  'crabs?',
  'anemones?',
  'rocks?',
  'live ?rock',
  'sand',
  'silicone',
  '(?:in|into) (?:the|my|our|a) (?:\\w+ )?(?:tank|water|sump|aquarium|dt)',
  'star ?fish',
] as const;
const ANIMALS = String.raw`(?:fish|clown\w*|tangs?|goby|gobies|wrasses?|blenny|damsels?|angel\w*|puffers?|eels?|anthias|chromis|crabs?|shrimps?|snails?|urchins?|star ?fish|octopus|seahorses?|lion ?fish|anemones?|mandarin\w*|animals?)`;
const SWITCH = String.raw`(?:rcds?|gfcis?|gfi|rcbo|elcb|(?:circuit )?breakers?|trip switch|safety switch|ground[- ]fault(?: breaker)?|residual[- ]current\w*|fuses?)`;
const PLUGS = [
  'plugs?',
  'power ?(?:strips?|bars?|boards?|bricks?)',
  'extension(?: leads?| cords?| cables?)?',
  'sockets?',
  'outlets?',
  'adapters?',
  'multi ?plugs?',
  'plug board',
] as const;

/**
 * What members ask or tell of that has a caution of its own, whether it is a plan or done already. A hurt person is heard
 * before this.
 */
const subjectWays: readonly (readonly [UrgentId, readonly Way[]])[] = [
  [
    'zoanthid rock',
    [
      {
        all: [
          [ZOA],
          [
            'dremel',
            'rotary tool',
            '(?:band|tile|hack|jig|wet|hole|coping|diamond) ?saw',
            'saws?(?= (?:on|for|blade|to|through))',
            'angle grinder',
            'multi ?tool',
            'power tools?',
          ],
        ],
      },
      {
        all: [
          [
            'boil\\w*',
            'bak(?:e|ed|ing)',
            'oven',
            'microwav\\w*',
            'steam\\w*',
            '(?:pressure|power) ?wash\\w*',
            'blow ?torch',
            'roast\\w*',
            'kettle',
          ],
          [ROCK],
        ],
        not: ['baking soda', 'baked in', 'half baked'],
      },
      {
        all: [
          [ZOA],
          [
            'scrub\\w*',
            'saw(?:ed|ing)',
            '(?<!i )saw (?:a |an |the |my |this |off |through )*(?:rock|frag|colony|zoas?|palys?|mat)',
            'drill\\w*',
            'grind\\w*',
            'chisel\\w*',
            'peroxide',
            'h2o2',
            'inject\\w*',
            'kalk paste',
            'bleach(?! (?:out|from|under))',
            'in bleach',
            'vinegar',
            'acid',
            'lemon juice',
            String.raw`(?:kill|get(?:ting)? rid of|exterminat\w*|nuke|eradicat\w*) (?:off )?(?:the |my |these |those |some |all |of )*(?:\w+ )?${ZOA}`,
            'clean up after',
            'scrap(?:e|ed|ing)',
            'blend\\w*',
          ],
        ],
        not: [
          ...OTHER_PEST,
          'fluffy',
          'fuzzy',
          'xenia',
          'gsp',
          'smother\\w*',
          'will bleach',
          '(?:my |the )?\\w+ (?:are|is) bleach\\w*',
          'bleached',
        ],
      },
      {
        all: [
          ['saw(?:ing)?', 'drill\\w*', 'grind\\w*', 'scrub(?:bing)?', 'chisel\\w*'],
          ['live ?rocks?', 'rock with (?:\\w+ )?(?:polyps|corals?)', 'reef rock'],
        ],
        not: ['i saw', 'saw (?:a|some|my|the|it|this)', 'algae'],
      },
    ],
  ],
  [
    'dying animal',
    [
      {
        all: [
          [
            'euthan\\w*',
            'mercy kill\\w*',
            'humane\\w*',
            'clove oil',
            '(?:out of|end) (?:its|his|her|their|the) misery',
            '(?:end|stop) (?:its|his|her|their|the) (?:life|suffering)',
            String.raw`put (?:it|him|her|them|(?:my|the|a) (?:\w+ )?${ANIMALS}) (?:down|to sleep)`,
            String.raw`put down (?:a |an |my |the )?(?:\w+ )?${ANIMALS}`,
            String.raw`(?:kill|flush|freeze|cull|dispatch|decapitate|behead) (?:a|an|my|the|this|that|it|him|her) ?(?:\w+ )?${ANIMALS}`,
            String.raw`(?:flush\w*|freez(?:e|ing)|boil\w*) (?:\w+ ){0,3}(?:dying|sick|dead|suffering) (?:\w+ )?${ANIMALS}`,
            String.raw`(?:freez(?:e|ing)|flush(?:ing)?) (?:a |an |my |the |it |him |her )+(?:\w+ )?(?:${ANIMALS})? ?(?:humane|painless|kind|cruel|quick)`,
          ],
        ],
        not: [
          ...OTHER_PEST,
          'what (?:could|would|can|might|did) kill',
          'will (?:it|they|this) kill',
          'bristle ?worms?',
          'freeze (?:my |the )?(?:food|mysis|brine)',
        ],
      },
      {
        all: [
          [ANIMALS],
          ['suffer\\w*', 'beyond help', 'no hope', 'past saving'],
          [
            'end it',
            'kill',
            'put (?:it|him|her) down',
            'let (?:it|him|her) go',
            'what (?:do|should|can) i do',
            'painless\\w*',
            'vet',
          ],
        ],
      },
    ],
  ],
  [
    'copper or medicine',
    [
      { all: [[COPPER_READS]], not: NO_FINDING },
      {
        all: [[COPPER, ...MEDICINES], OF_REEF],
        not: [
          'how much',
          'dos(?:e|age) (?:of|for)',
          'quarantine',
          'qt',
          'hospital',
          '\\d+ ?(?:mg|ml|g)',
          'copper (?:in )?(?:icp|test)',
          'carbon',
        ],
      },
      {
        all: [
          [COPPER],
          [
            'resin',
            'remov\\w*',
            'get rid of',
            'get out',
            'left over',
            'stays?',
            'leach\\w*',
            'pipes?',
            'fittings?',
            'ever had',
            'used (?:to have|with|for)',
            'tap water',
            'safe',
            'harm\\w*',
            'kill\\w*',
            'toxic',
          ],
        ],
        not: ['how much', 'quarantine', 'qt', 'hospital', '\\d+ ?(?:mg|ml|g)', ...CURE],
      },
    ],
  ],
  [
    'untreated tap water',
    [
      {
        all: [
          [
            'tap ?water',
            'untreated water',
            'hose ?water',
            'city water',
            'water from the (?:tap|hose)',
            'chlorinated water',
          ],
          [
            'untreated',
            'forgot',
            'forget',
            'without (?:\\w+ )?(?:conditioner|dechlor\\w*|treat\\w*)',
            'conditioner',
            'dechlor\\w*',
            'chlor(?:ine|amine)s?',
            'by (?:mistake|accident)',
            'accident\\w*',
            'safe',
            'can i',
            'ok(?:ay)?',
            'is it',
            'straight',
            'filled',
            'topped',
            'used',
            'stand',
            'overnight',
          ],
        ],
        not: ['drink', 'wash my', 'rinse', 'copper'],
      },
      {
        all: [
          ['chlor(?:ine|amine)s?', 'dechlor\\w*', 'water conditioner'],
          [
            'ro ?di',
            'ro',
            'tap',
            '(?:water|city|town|council|utility|municipal|mains) ?(?:water|company|supply|supplier|board|authority|works|utility|plant)?',
            'switched',
            'uses?',
            'adds?',
            'reef',
            'tank',
            'evaporat\\w*',
            'gas(?:ses)? off',
            'carbon',
            'test',
            'remove\\w*',
            'harm\\w*',
            'bad',
            'safe',
            'stand',
            'do i need',
            'what',
            'conditioner',
            'fish',
            'corals?',
            'leave\\w*',
          ],
        ],
        not: [
          'bleach',
          'chlorine gas',
          'pool',
          'vinegar',
          'acid',
          'dumped',
          'spill\\w*',
          'poured',
          'fell',
          'dropped',
          'put chlorine',
        ],
      },
    ],
  ],
  [
    'mains fault',
    [
      {
        all: [
          [
            String.raw`${SWITCH} (?:\w+ ){0,4}(?:trips|tripping|keeps? (?:on )?tripp\w*|pops|popping|tripped again|jumps|blows)`,
            String.raw`(?:trips|tripping|keeps blowing|pops) (?:\w+ ){0,3}${SWITCH}`,
            String.raw`${SWITCH} (?:\w+ ){0,2}(?:won'?t|will not|does ?n'?t) (?:reset|stay on|hold)`,
          ],
        ],
        not: [
          '(?:tank|everything|all|pumps?|power) (?:is |are )?(?:off|out|stopped|down)',
          'smok\\w*',
          'fire',
          'burn\\w*',
        ],
      },
      {
        all: [
          PLUGS,
          [
            'wet',
            'water (?:in|on|into|ran|dripp\\w*)',
            'got water',
            'dripp\\w*',
            'puddle',
            'soaked',
            'splash\\w*',
            'damp',
            'salt ?water',
            'hum(?:s|ming)',
            'buzz(?:es|ing)',
            'warm',
            'hot',
          ],
          [
            'safe',
            'plug (?:it|them)? ?back',
            'can i',
            'what (?:do|should|now)',
            'is it',
            'dry',
            'use it',
            'lying',
            'in a puddle',
            'hum(?:s|ming)',
            'buzz(?:es|ing)',
          ],
        ],
        not: [
          'which',
          'best',
          'recommend\\w*',
          'buy',
          'what power strip',
          'melt\\w*',
          'smok\\w*',
          'spark\\w*',
          'burn\\w*',
          'scorch\\w*',
          'fire',
        ],
      },
      {
        all: [
          ['(?:multimeter|volt ?meter|tester)'],
          ['tank', 'water', 'sump'],
          ['volts?', 'voltage', '\\d+ ?v'],
        ],
      },
    ],
  ],
];

const tests = subjectWays.map(([id, ways]) => ({ id, test: saidIn(ways) }));

/** The card of a subject that a cleaned text plans or tells of; undefined for none. */
export function subjectIn(text: string): UrgentId | undefined {
  return tests.find(({ test }) => test(text))?.id;
}

/** Questions about mains before anything is wrong. */
export const asksOfMains = saidIn([
  {
    all: [
      [
        'drip ?loops?',
        'ground(?:ing|ed)? (?:probe|rod)s?',
        'titanium probe',
        'stray (?:voltage|current)',
        'daisy ?chain\\w*',
        'shock (?:hazard|risk)',
        'electrical safety',
        'worry about (?:\\w+ )?shocks?',
        'water off (?:my|the) (?:plugs?|sockets?|outlets?)',
      ],
    ],
  },
  {
    all: [
      [SWITCH],
      [
        'do i need',
        'need',
        'should i',
        'worth',
        'what is',
        'why',
        'which',
        'for (?:a|my|the) (?:\\w+ )?tank',
        'trip\\w*',
        'test',
      ],
    ],
    not: ['power (?:is )?(?:out|off)', 'salinity', 'auto ?top', 'ato'],
  },
  {
    all: [
      PLUGS,
      [
        'safe\\w*',
        'where',
        'ok(?:ay)?',
        'allowed',
        '(?:under|behind|near|beside|next to|above|inside|in) (?:the|my|a) (?:tank|sump|stand|cabinet|aquarium)',
        'salt creep',
        'mount\\w*',
        'near water',
        'recommend\\w*',
        'best',
        'which',
        'overload\\w*',
        'how many',
      ],
    ],
    not: ['frag plugs?', 'plug (?:and|n) play'],
  },
  {
    all: [
      ['(?:put|stick|reach|have|get|place|dip|work)\\w* (?:\\w+ ){0,3}(?:hands?|arms?|in)(?: \\w+){0,4}'],
      ['hands?', 'arms?', 'reach\\w*'],
      [
        'plugged',
        'power(?:ed)? on',
        'heaters?',
        'pumps?',
        'lights? on',
        'unplug\\w*',
        'electric\\w*',
        'everything on',
      ],
      ['safe', 'can i', 'ok(?:ay)?', 'should i', 'need to', 'do i'],
    ],
  },
]);
