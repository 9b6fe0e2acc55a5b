import type { Way } from '../said.ts';
import { ANIMAL, ASKED, CAUSTIC, LIMB, MY_BODY, VENOMOUS } from './person-parts.ts';
import { BITES, HOT_AIR, JELLY, OXIDISER, ROCK, SOUR, SQUIRTED, TOOL, ZOA } from './words.ts';

/** A part of somebody, with or without whose: "down the calf". */
const PART = String.raw`(?:${MY_BODY}|(?:my|his|her) \w+ ${LIMB}|(?:the |a |one |both |left |right |bare )*(?:${LIMB}|shoulders?|skin|belly|face|neck))`;
const ONTO = String.raw`(?:in|into|through|up|down|on|onto|over|across|along|round|around|under|to|at|off)`;
/** Asked before anything happened. */
const PLANNED = [
  ASKED,
  'avoid\\w*',
  'prevent\\w*',
  'gloves',
  'never',
  "do ?n'?t",
  'what (?:happens|if)',
  'if (?:i|you|we|it|a|the)',
  '(?:should|may) (?:i|we|you)',
  '(?:can|could) (?:i|we|you)(?! still| feel)',
  'is it (?:ok|okay|safe|bad)',
  'how (?:long|often|much|hot)',
  'which',
  'best',
  'recommend\\w*',
] as const;
const SHOCK = String.raw`(?:zap\w*|jolt\w*|buzz\w*|tingl\w*|shock\w*|current|electri\w*)`;
const SAFETY_SWITCH = String.raw`(?:rcds?|gfcis?|gfi|rcbo|(?:circuit )?breaker|fuse|earth leakage switch)`;
const AIR = [
  'smell\\w*',
  'smelt',
  'stinks?',
  'stench',
  'fumes?',
  'gas',
  'burn\\w*',
  'sting\\w*',
  'cough\\w*',
  'wheez\\w*',
  'chok\\w*',
  'throat',
  'lungs?',
  'eyes?',
  'dizz\\w*',
  'foam(?:ed|s|ing)?',
  'bubbl\\w*',
  'green cloud',
] as const;

const TOGETHER = [
  'mix\\w*',
  'combin\\w*',
  'plus',
  'added',
  'poured',
  'together',
  '(?:same|one) (?:bucket|sink|tub|bin|container)',
] as const;

/** Two cleaners that make a poisonous gas with each other. */
export const cleanerPairs: readonly Way['all'][] = [
  [[OXIDISER], [SOUR]],
  [
    ['bleach', 'chlorine', 'hypochlorite'],
    ['peroxide', 'h2o2'],
  ],
];
/** The same put together, or smelt. */
export const mixedCleaners: readonly Way['all'][] = cleanerPairs.flatMap((pair) => [
  [...pair, TOGETHER],
  [...pair, AIR],
]);

/** What hurts by what it did to which part, each a family: where both are named, nobody else need be. */
export const families: readonly Way[] = [
  ...mixedCleaners.map((all) => ({
    all,
    not: [
      ...PLANNED,
      ANIMAL,
      'dip\\w*',
      '(?:is|are|was|were|it|they|corals?|slowly|has|have) (?:\\w+ )?bleach\\w*',
      'vs',
      'or',
      'tap',
      'ro ?di',
      'ppm',
      'test\\w*',
      'reads?',
    ],
  })),
  { all: [[CAUSTIC], [String.raw`(?:in|into) (?:\w+ ){0,2}(?:eyes?|eyeballs?)`]], not: [...PLANNED, ANIMAL] },
  {
    all: [
      [PART],
      [String.raw`(?:slipped|fell|went|dipped|dropped|soaked|stuck|put) (?:in|into) (?:\w+ ){0,2}${CAUSTIC}`],
    ],
    not: [...PLANNED],
  },
  {
    all: [
      ['(?:chlorine|chloramine|bleach|ammonia|poison(?:ous)?|acid|toxic|muriatic) (?:gas|fumes|vapou?rs?)'],
    ],
    not: [...PLANNED, 'off ?gas'],
  },
  {
    all: [
      [CAUSTIC],
      [
        String.raw`(?:dripp\w*|ran|run|splash\w*|spill\w*|spilt|got|leak\w*|spray\w*|squirt\w*|pour\w*|tipped|went|flick\w*|all over|is|are)(?: \w+){0,2} ${ONTO} ${PART}`,
      ],
    ],
    not: [...PLANNED, 'glued on'],
  },
  {
    all: [
      [
        String.raw`(?:got|get|was|were|been|am|just|getting) (?:\w+ )?(?:jolted|electrified|zapped|electrocuted)`,
        String.raw`${PART} (?:\w+ ){0,2}(?:jolted|electrified|zapped|electrocuted)`,
      ],
    ],
    not: [...PLANNED, ANIMAL, 'acros?', 'sps', 'lights?(?! (?:hood|fixture|switch))'],
  },
  {
    all: [[String.raw`${SHOCK} (?:\w+ ){0,3}${ONTO} ${PART}`]],
    not: [...PLANNED, 'electric blue', 'shocked (?:by|at|how|to)'],
  },
  {
    all: [
      [
        String.raw`(?:shock|zap|jolt)\w* (?:by|from|off|through|out of) (?:the |my |a )?(?:\w+ )?(?:tank|sump|water|pump|heater|light|lamp|skimmer|chiller|power ?head|wave ?maker|cable|cord|plug|hood|fixture)`,
      ],
    ],
    not: [
      ...PLANNED,
      'acros?',
      'sps',
      'lps',
      '(?:high|strong|bright|too much|new) (?:\\w+ )?lights?',
      'price',
      'cost',
      'growth',
      'how',
      'colou?r',
      ANIMAL,
      'corals?',
    ],
  },
  { all: [['electricity', 'electric'], [PART]], not: [...PLANNED, 'electric blue', 'bill'] },
  {
    all: [
      [SAFETY_SWITCH],
      ['trip\\w*', 'popp\\w*', 'went', 'jump\\w*'],
      ['touch\\w*', 'reach\\w*', 'grabb\\w*', 'hand', 'arm', 'finger'],
      ['hurts?', 'felt', 'pain\\w*', SHOCK, 'sore', 'numb', 'ach\\w*'],
    ],
  },
  {
    all: [
      [VENOMOUS, JELLY, 'bristle ?worms?'],
      [
        String.raw`(?:spines?|barbs?|quills?|stingers?|tentacles?|threads?|bristles?|stings?|rash|welts?|burns?|worm|war|nettle) (?:\w+ ){0,4}${ONTO} (?:\w+ )?${PART}`,
        String.raw`${JELLY} (?:stings?|stung|burns?)`,
        String.raw`${PART} (?:\w+ ){0,2}(?:full of|covered (?:in|with)|stung by|burns? from)`,
      ],
    ],
    not: [...PLANNED, 'brown jelly'],
  },
  {
    all: [
      [
        String.raw`(?:${JELLY}|fire coral|hydroids?|anemone|moray|eel|octopus|scorpion ?fish) (?:burn|sting|rash|bite)s?(?= *(?:$|[,.!?]|help|now|what))`,
      ],
    ],
    not: [...PLANNED, String.raw`(?:do|does|will|which|when|how) (?:\w+ ){0,3}(?:burn|sting|bite)s?`],
  },
  {
    all: [
      [
        String.raw`(?:toad|stone|lion|scorpion|rabbit|wasp) ?fish|fox ?face|(?:sting ?)?ray|fire ?worm|bristle ?worm|man[- ](?:o'?|of)[- ]?war|sea nettle`,
      ],
      [
        String.raw`(?:in|into|through|got|stuck|nailed|hit|under|whipped|lashed|poked|jabbed) (?:\w+ )?${PART}`,
      ],
    ],
    not: [...PLANNED, 'tank', 'fed', 'feed\\w*', 'eats? from'],
  },
  {
    all: [
      [String.raw`(?:fire|bristle) ?worm|hydroids?|fire coral|${JELLY}|anemone|nem`],
      [
        String.raw`${PART} (?:is |are |was |feels? )?(?:\w+ )?(?:sting|burn|itch|swoll|swell|hurt|numb)\w*`,
        String.raw`(?:stung|stings?|burn(?:t|ed|s)|got) ${PART}`,
      ],
    ],
    not: [...PLANNED],
  },
  {
    all: [
      [
        String.raw`${BITES} (?:\w+ ){0,3}(?:bit|got|nipped|clamped|latched|attacked|grabbed|drew|broke the skin|has (?:hold of )?(?:my|his|her))`,
      ],
      [
        PART,
        'blood',
        'bleed\\w*',
        '(?:bit|nipped|got|attacked) me.{0,30}(?:hard|deep|blood|hurts?|skin|bleed\\w*)',
      ],
    ],
    not: [
      ...PLANNED,
      String.raw`bit (?:my|the|a) (?:${ANIMAL}|coral)`,
      'lol',
      'eats? (?:from|out of)',
      'got (?:a|his|its|her)',
    ],
  },
  {
    all: [
      [TOOL],
      [
        String.raw`(?:through|into|in|cut|slipped|sliced|got|caught|nicked|hit|bit|took|took off|chopped|severed|snipped|stabb?ed|stuck|stick|across|pricked|poked|on) (?:\w+ ){0,6}${PART}`,
        'arter(?:y|ies)',
        '(?:stuck|stabb?ed|pricked|poked|cut|sliced|injected|nicked) (?:myself|me|himself|herself)',
        String.raw`${PART} (?:\w+ ){0,4}(?:bleed\w*|gash\w*|sliced|open)`,
      ],
    ],
    not: [
      ...PLANNED,
      'hold\\w*',
      'in (?:my|the|one) (?:right |left )?hand',
      'fish',
      'hands? in(?:to)? (?:the|my)',
    ],
  },
  {
    all: [
      [
        'arter(?:y|ies)',
        'blood spurt\\w*',
        'spurting',
        String.raw`(?:i'?m|i am|we are|he is|she is|he'?s|she'?s) bleeding`,
        'bleed\\w* (?:\\w+ )?(?:heavily|badly|everywhere|profusely|a lot)',
      ],
    ],
    not: [ANIMAL],
  },
  {
    all: [
      [ZOA],
      [SQUIRTED],
      [
        String.raw`(?:on|onto|over|in|into|at|across|down|up|hit|got) (?:\w+ )?(?:${PART}|eyes?|me|myself|him|her(?! tank)|us)`,
      ],
    ],
    not: [...PLANNED, 'glue'],
  },
  {
    all: [
      [ROCK],
      [HOT_AIR],
      [
        'burn(?:t|ed|s|ing)?',
        'scald\\w*',
        'breath\\w*',
        'cough\\w*',
        'inhal\\w*',
        'face',
        'lungs?',
        'chok\\w*',
      ],
    ],
    not: [...PLANNED, 'breathe on'],
  },
  {
    all: [
      [
        String.raw`^(?:fell|slipped|tumbled|tripped) (?:off|from|down|over) (?:\w+ ){0,2}(?:ladder|stool|chair|steps?|stairs|bench|stepladder)`,
        String.raw`knocked (?:out|unconscious|me out|him out|her out)`,
        String.raw`(?:i|he|she|wife|husband|son|daughter|kid|mum|mom|dad|friend|we) (?:\w+ )?(?:fell|came|slipped|tumbled) (?:off|from|down) (?:\w+ )?(?:the |a |my |his |her )?(?:\w+ )?(?:ladder|stool|chair|steps?|stairs|bench|table|stepladder)`,
      ],
    ],
    not: [...PLANNED, 'knocked out (?:the |my )?(?:nitrates?|phosphates?|algae|power|pump)'],
  },
  {
    all: [
      [
        String.raw`(?:mantis(?: shrimp)?|pistol shrimp|crab|lobster|urchin) (?:\w+ ){0,3}(?:smash|punch|hit|struck|club|crush|broke|split|pinch|cut|got)\w* (?:\w+ )?(?:${PART}|(?:my|his|her) nail)`,
      ],
    ],
    not: [...PLANNED],
  },
];
