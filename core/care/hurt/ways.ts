import type { Way } from '../said.ts';
import type { HurtId } from './cards.ts';
import { mixedCleaners } from './families.ts';
import {
  ANEMONE_OR_CORAL,
  BITES,
  CAUSTIC,
  EYE,
  HOT_AIR,
  ILLNESS,
  JELLY,
  PET,
  ROCK,
  SKIN,
  SOLVENT,
  SQUIRTED,
  STUNG,
  TOOL,
  WORKED,
  ZOA,
} from './words.ts';

/**
 * How a sentence that is known to speak of a hurt tells which one, in the order to try them: what can kill within
 * minutes, then the sore that hides behind a cut, then what was touched, then what it did.
 */
export const hurtWays: readonly (readonly [HurtId, readonly Way[]])[] = [
  [
    'pet',
    [
      {
        all: [[PET]],
        not: [
          'dog ?face',
          'cat ?fish',
          `${PET} (?:bit|scratched) (?:me|my)`,
          'me and',
          'and (?:me|i)',
          'both of us',
          'all of us',
          'whole family',
          'cat litter',
          'dog ?toy',
        ],
      },
    ],
  ],
  [
    'allergic reaction',
    [
      {
        all: [
          [
            'anaphyla\\w*',
            'allerg\\w*',
            'hives',
            String.raw`(?:throat|tongue) (?:is |are |feels? |was )?(?:\w+ )?(?:clos\w*|swell\w*|swollen|tight\w*)`,
            '(?:face|lips?) (?:is |are |was |got )?(?:\\w+ )?(?:swell\\w*|swollen|puff\\w*)',
            'swollen (?:tongue|face|lips?)',
          ],
        ],
      },
    ],
  ],
  [
    'electric shock',
    [
      {
        all: [
          [
            'electri\\w*',
            'electrocut\\w*',
            'shock(?:ed|s|ing)?',
            'zap(?:ped|s)?',
            'jolt(?:s|ed)?',
            'voltage',
            'live wire',
            'buzz\\w*',
            '(?:rcd|gfci|gfi|breaker|fuse) .{0,20}(?:trip|popp|went)\\w* .{0,20}(?:touch|reach|grabb|hand|arm|finger)\\w*',
            'current',
            'thrown back',
          ],
        ],
        not: ['shock(?:ed)? (?:by|at) (?:the )?(?:price|size)', 'strong current'],
      },
      {
        all: [
          ['tingl\\w*', 'prickl\\w*', 'numb'],
          [
            '(?:put|stick|reach|touch|have|stuck|dip)\\w* (?:\\w+ ){0,6}(?:tank|water|sump|light|lamp|hood|fixture|heater|pump)',
            'in the (?:tank|water|sump)',
            'when(?:ever)? i feed',
            'every ?time i',
          ],
        ],
        not: [ZOA, 'coral', 'anemone', 'after', 'since', 'worm'],
      },
    ],
  ],
  [
    'collapsed',
    [
      {
        all: [
          [
            "(?:not|\\w*n'?t|stopped) breath\\w*",
            'unconscious',
            'unresponsive',
            'passed out',
            'collapsed',
            'faint(?:ed|ing)',
            'seiz(?:ure|ures|ing)',
            'convuls\\w*',
            'blacked out',
            'keeled over',
            "(?:not|\\w*n'?t) (?:wak\\w*|answer\\w*|respond\\w*)",
            'on the floor',
            'f[ae]ll(?:s|en)? down',
            'heart attack',
            'stroke',
          ],
        ],
        not: [
          'collapsed on',
          'fell down the',
          ZOA,
          WORKED.replace('clean\\w*|', '').replace('mov(?:ed|ing)|', ''),
          'brush ?stroke',
          'fumes',
          'generator',
          SOLVENT,
        ],
      },
    ],
  ],
  [
    'infected wound',
    [
      {
        all: [
          [
            'infect\\w*',
            'pus',
            'red (?:streaks?|lines?)',
            "(?:not|never|\\w*n'?t) heal\\w*",
            'granuloma',
            'marinum',
            'vibrio',
            '(?:sore|lump|bump|wound|cut|scratch).{0,60}(?:for|since) (?:\\w+ )?(?:weeks|months|days)',
            '(?:wound|sore|cut|sting|bite) .{0,60}(?:purple|black|turning dark)',
            'weep\\w*',
            'ooz\\w*',
            '(?:redness|red).{0,40}spread\\w*',
            'lump on my',
            '(?:hot and (?:red|swollen)|red,? hot)',
            '(?:days|weeks?) (?:after|ago|later).{0,60}(?:swollen|red|hot|sore)',
            '(?:cut|scratch|wound|scrape|poke\\w*).{0,40}(?:fever|getting worse|turned black|throbbing|(?:is|looks?) (?:hot|angry))',
            '(?:swollen|red) and (?:hot|warm)',
            'cut .{0,40}red and swollen',
          ],
        ],
        not: [EYE],
      },
    ],
  ],
  [
    'glue',
    [
      {
        all: [
          ['(?:super ?|frag ?|gel ?)?glue(?:d)?', 'cyanoacrylate', 'epoxy'],
          [EYE, SKIN, 'stuck', 'together', 'ripped'],
        ],
        not: [`${ZOA}`, 'gluing', 'cut'],
      },
    ],
  ],
  [
    'palytoxin in eye or cut',
    [
      {
        all: [[ZOA], [SQUIRTED], [SKIN, EYE, 'me', 'us']],
        not: [
          'fever',
          'cough\\w*',
          'chest',
          'taste\\w*',
          'breath\\w*',
          'swallow\\w*',
          'drank',
          'ate',
          'lick\\w*',
          'mouth',
          'glue',
          HOT_AIR,
        ],
      },
      {
        all: [
          [`${ZOA}`, 'polyps?', 'frag(?:ged|ging)', 'colon(?:y|ies)', 'coral (?:slime|juice)'],
          [
            EYE,
            'squirt\\w*',
            'sprayed my face',
            'open (?:cut|wound|sore)',
            `into (?:my|his|her) (?:\\w+ )?${SKIN}`,
            'in (?:a|my|an|the) (?:\\w+ )?(?:cut|scratch|wound|scrape)',
            String.raw`(?:cut|sliced|stabbed|nicked|pricked|scratched) (?:open )?(?:my|his|her|a|myself|me)(?! (?:zoas?|palys?))`,
          ],
        ],
        not: [`(?:fever|cough|chest|taste|breath\\w*)`, 'glue on'],
      },
      {
        all: [[EYE], [ROCK], [WORKED, 'squirt\\w*']],
        not: [
          CAUSTIC,
          'fever',
          'cough\\w*',
          'aiptasia',
          'anemone',
          'salt ?water',
          'breath\\w*',
          'watering',
          'steam\\w*',
          'boil\\w*',
        ],
      },
    ],
  ],
  [
    'palytoxin breathed',
    [
      {
        all: [
          [ROCK],
          [HOT_AIR],
          ['burn\\w*', 'scald\\w*', 'breath\\w*', 'inhal\\w*', 'cough\\w*', 'face', 'lungs?', 'chok\\w*'],
        ],
        not: ['kettle', 'boiling (?:water|rodi)', 'bleach', 'acid', 'vinegar', 'swallow\\w*'],
      },
      {
        all: [
          [
            'palytoxin',
            '(?:metal|metallic|bitter|weird|strange|funny) taste',
            'tast(?:e|es|ed|ing)(?: \\w+)? (?:of |like )?(?:metal\\w*|penn\\w*|coins?|copper)',
          ],
        ],
        not: ['swallow\\w*', 'drank', 'ate', 'bleach', 'acid'],
      },
      {
        all: [
          [
            ROCK,
            'tank (?:work|cleaning|maintenance)',
            'fragging',
            '(?:doing|cleaning|working on|work on) the tank',
          ],
          [WORKED, 'new corals?', 'since', 'after'],
          [ILLNESS],
        ],
        not: [
          'stung',
          'sting',
          'bit(?:ten)?',
          'swallow\\w*',
          'drank',
          'ate',
          'bleed\\w*',
          'mouth',
          'put in',
          'broken',
          'glass',
          'urchin',
          'worms?',
          'anemones?',
          'nems?',
          'bta',
          'lion ?fish',
          'hydroids?',
          'fire coral',
          SOLVENT,
          'fell',
          'slipped',
          'dropped',
          'hit (?:his|her|my)',
          `${SKIN} (?:is |are |feels? |went |got )*(?:swollen|burning|red|hot)`,
        ],
      },
      {
        all: [
          [ZOA, 'live rock', 'rocks?', 'steam\\w*', 'boil\\w*', 'microwav\\w*'],
          [ILLNESS],
          [
            'boil\\w*',
            'steam\\w*',
            'microwav\\w*',
            'pressure ?wash\\w*',
            'scrub\\w*',
            'scrap\\w*',
            'inhal\\w*',
          ],
        ],
        not: ['scrape', 'scraped (?:my|his)', SOLVENT, 'kettle', 'boiling water'],
      },
      {
        all: [[ZOA], [ILLNESS, 'symptoms?']],
        not: ['swallow\\w*', 'drank', 'ate', 'eaten', 'mouth', 'licked', 'bleed\\w*'],
      },
    ],
  ],
  [
    'swallowed',
    [
      {
        all: [
          [
            'swallow\\w*',
            'drank',
            'drunk',
            'drinks?',
            'drinking',
            'ate',
            'eaten',
            'lick(?:ed|s)',
            'ingest\\w*',
            'mouthful',
            'sip(?:ped)?',
            'swig\\w*',
            'gargled',
            'chugged',
            'guzzled',
            'gulp\\w*',
            'chewed',
            'bit into',
            '(?:put|puts|had|has|stuck|got) (?:\\w+ ){1,6}in (?:(?:his|her|their|its|the|my) )?mouth',
            'suck(?:ed|s|ing) (?:on|the)',
          ],
        ],
      },
    ],
  ],
  [
    'fumes or smoke',
    mixedCleaners.map((all) => ({
      all,
      not: ['(?:in|into|on) (?:my|his|her|the|one|both) (?:\\w+ )?eyes?', SKIN],
    })),
  ],
  [
    'in the eye',
    [
      {
        all: [[EYE]],
        not: [
          'fumes',
          'smoke',
          'vapou?rs?',
          'throat',
          'opened',
          'breath\\w*',
          'cough\\w*',
          'keep an eye',
          'stung my',
          'eyes? (?:are |is )?(?:burn\\w*|water\\w*).{0,40}(?:after|since) (?:i |we )?(?:mix\\w*|open\\w*|spray\\w*|clean\\w*)',
          '(?:water(?:ing|y)|burn\\w*) eyes',
        ],
      },
      { all: [['stung my eye', 'aiptasia.{0,20}eye', '(?:my|his|her) eye']], not: ['fumes', 'smoke'] },
      {
        all: [
          ['splash\\w*', 'spray\\w*', 'squirt\\w*', 'powder', 'dust'],
          ['(?:in|into|on|to) (?:my|his|her|the) face', 'face'],
          [CAUSTIC, 'bottle'],
        ],
        not: ['breath\\w*', 'cough\\w*'],
      },
    ],
  ],
  [
    'fire or burn',
    [
      {
        all: [
          ['burn\\w*', 'scald\\w*', 'singed'],
          [
            'lamp',
            'bulb',
            'halide',
            'halogen',
            'ballast',
            'heater',
            'hot',
            'boiling',
            'kettle',
            'steam',
            'stove',
            'iron',
            'soldering',
            'flames?',
            'fire',
            'fixture',
            'light',
          ],
        ],
        not: ['feels? (?:like|on)', 'on fire', 'fire ?(?:coral|worm|fish)', CAUSTIC, ZOA, 'broken', 'glass'],
      },
      {
        all: [
          [
            'scald\\w*',
            'boiling water',
            'caught fire',
            'third degree',
            'hot water',
            'singed',
            `boiling (?:\\w+ ){0,2}(?:on|over) (?:my|his|her) ${SKIN}`,
          ],
        ],
        not: [ZOA, CAUSTIC],
      },
    ],
  ],
  [
    'fumes or smoke',
    [
      {
        all: [
          [
            'fumes?',
            'smoke',
            'gas',
            'generator',
            'carbon monoxide',
            'co alarm',
            'grill',
            'charcoal',
            'camping stove',
            'inhal\\w*',
            'breath(?:ed|ing) (?:in )?',
            'vapou?rs?',
            'mix(?:ed|ing)? .{0,60}(?:bleach|acid|vinegar)',
            '(?:bleach|acid|vinegar) .{0,30}(?:together|mixed)',
            'ozone',
            'up my nose',
            'in my (?:throat|lungs|nose)',
          ],
        ],
        not: ['not breathing', 'hard to breathe'],
      },
      {
        all: [
          [SOLVENT, CAUSTIC],
          [
            'cough\\w*',
            'wheez\\w*',
            '(?<!on (?:my|his|her|the) )chest',
            'throat',
            'lungs?',
            'nose',
            'breath\\w*',
            'dizz\\w*',
            'headaches?',
            'feel (?:\\w+ )?(?:sick|faint|ill)',
            '(?:eyes|watering).{0,20}(?:burn\\w*|water\\w*)',
            EYE,
            'faint(?:ed)?',
          ],
        ],
      },
    ],
  ],
  [
    'bite',
    [
      {
        all: [
          [
            String.raw`${BITES} (?:\w+ ){0,3}(?:got|clamped|latched|attacked|grabbed|drew|has)`,
            'octo(?:pus)?',
            'cone snails?',
            'cone shell',
            'chomped',
            'nipped',
            'took a (?:\\w+ )?(?:chunk|bite|piece)',
            '(?:bit|bite|bites|bitten|biting)',
          ],
        ],
        not: ['bit of', 'a bit', 'little bit', 'not bit', 'bit my (?:coral|fish)'],
      },
    ],
  ],
  [
    'fish spine',
    [
      {
        all: [
          [
            'lion ?fish',
            'volitans',
            'scorpion\\w*',
            'spined',
            'stone ?fish',
            '(?:sting)? ?rays?',
            'sting ?ray',
            'rabbit ?fish',
            'fox ?face',
            'weever',
            'toad ?fish',
            'cat ?fish',
            'waspfish',
            '(?:tangs?|surgeon ?fish)(?: \\w+){0,3} (?:cut|sliced|slashed|stabbed|got|blade|spine|scalpel)',
            'tail blade',
            '(?:fish|dorsal|fin) spine[sd]?',
          ],
        ],
      },
    ],
  ],
  ['urchin spine', [{ all: [['urchins?', 'crown of thorns', 'diadema', 'quills?']] }]],
  ['bristle worm', [{ all: [['bristle ?worms?', 'fire ?worms?', 'bristles?', 'worm hairs?']] }]],
  [
    'jelly or hydroid sting',
    [{ all: [[JELLY, 'hydroids?', 'fire coral', 'millepora', 'tentacles? of a jelly']] }],
  ],
  [
    'on the skin',
    [
      {
        all: [[CAUSTIC], [SKIN, 'burn\\w*', 'splash\\w*', 'spill\\w*', 'spilt', 'on me', 'myself']],
        not: ['coral (?:cut|scrape)', 'glass', 'slipped', 'fell'],
      },
    ],
  ],
  [
    'cut or glass',
    [
      {
        all: [['mantis\\w*', 'pistol shrimp', TOOL, 'arter(?:y|ies)']],
        not: [
          'fell',
          'chair',
          'ladder',
          'stool',
          'slipp(?:ed|ing) (?:on|in) (?:the |a )?(?:wet|floor|water)',
          'glass (?:\\w+ )?(?:tank|lid|top|fell|dropped)',
          '(?:sting|stung|rash)',
        ],
      },
    ],
  ],
  [
    'fall or crush',
    [
      {
        all: [
          [
            'fell',
            'slipp(?:ed|ing)',
            'tripped',
            'tumbled',
            'knocked (?:\\w+ )?(?:out|unconscious)',
            'crush\\w*',
            'pinned',
            'trapped',
            'landed on',
            'collapsed on',
            'hit (?:his|her|my|their) head',
            'concuss\\w*',
            'ladder',
            'dropped',
            '(?:rolled|came down|tipped|slid|landed) (?:\\w+ ){0,2}on(?:to)? (?:me|him|my|his|her)',
            'broke (?:my|his|her)',
            'smash\\w*',
            'jammed',
            '(?:tank|stand|rock|light) (?:\\w+ )?on (?:me|him|us|my)',
            'broke on',
            'pulled (?:my|his|her) back',
          ],
        ],
        not: ['blade', 'razor', 'glass (?:cut|in)', 'cut'],
      },
    ],
  ],
  [
    'anemone or coral sting',
    [
      {
        all: [[ANEMONE_OR_CORAL], [STUNG]],
        not: ['bleed\\w*', 'glass', 'knife', 'blade', 'sliced', 'gash', 'since i cut', 'cut my (?:\\w+ )?on'],
      },
    ],
  ],
  [
    'cut or glass',
    [
      {
        all: [
          [
            'cut',
            'cuts',
            'glass',
            'bleed\\w*',
            'sliced',
            'slashed',
            'gash\\w*',
            'shards?',
            'blade',
            'razor',
            'scissors',
            'knife',
            'barnacle',
            'stitches',
            TOOL,
            'arter(?:y|ies)',
            'spurt\\w*',
            'stabb?ed',
            'punctur\\w*',
            'pierced',
            'splinter\\w*',
            'scrap(?:ed|e)',
            'scratch\\w*',
            'grazed?',
            'mantis',
            '(?:frag )?saw',
            'pinched',
            'poked',
            'pricked',
            'hook',
          ],
        ],
      },
    ],
  ],
  ['allergic reaction', [{ all: [['rash', 'welts?', 'itch\\w*']] }]],
  ['anemone or coral sting', [{ all: [['stung', 'sting(?:s|ing)?']] }]],
  ['electric shock', [{ all: [['tingl\\w*'], ['tank', 'water', 'sump']] }]],
  [
    'collapsed',
    [
      {
        all: [
          [
            "(?:cannot|can'?t|can not|couldn'?t) breath\\w*",
            'not breath\\w*',
            'faint\\w*',
            'collapsed',
            'passed out',
            'unconscious',
            'unresponsive',
          ],
        ],
      },
    ],
  ],
];
