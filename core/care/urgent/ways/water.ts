import type { Way } from '../../said.ts';
import type { UrgentId } from '../cards.ts';
import { DOSED, FISH, FISHES } from '../way-words.ts';

/** A fish without water or air, and water that is wrong by a number. */
export const waterWays = {
  'out of the water': [
    {
      all: [
        [...FISHES],
        ['got out', 'escaped', 'climbed out', 'is out', 'crawled out', 'out of the (?:tank|water)'],
        ['floor', 'carpet', 'ground', 'rug', 'room', 'sofa', 'dry', 'dried'],
      ],
      not: ['how', 'can', 'will', 'if', 'dry(?:ing)? (?:rock|sand)'],
    },
    {
      all: [
        [
          String.raw`(?:fish|clown\w*|tang|goby|wrasse|jawfish|blenny|eel|anthias|chromis|firefish|he|she|it|one) (?:has |just |have |must have |had )*(?:jumped|jump|leapt|flew|fell)`,
        ],
        ['out', 'carpet', 'floor', 'overflow', 'ground', 'behind'],
      ],
      not: ['(?:will|do|does|can|could|might|may|would) (?:\\w+ ){0,3}jump'],
    },
    {
      all: [
        [
          '(?:fish|clown\\w*|tang|goby|wrasse|eel|jumper)(?: is| was| lying| laying| found)* (?:on|on the|behind) (?:the )?(?:floor|carpet|ground)',
          'carpet surf\\w*',
          '(?:found|saw) (?:\\w+ ){0,5}(?:behind|under|beside|next to) (?:the |my )?(?:tank|stand|cabinet|sump) (?:\\w+ ){0,3}(?:on the (?:floor|carpet|ground)|alive|dry|dried\\w*|gasping|breathing)',
          '(?:found|picked up) (?:\\w+ ){0,3}(?:fish|clown\\w*|tang|goby|wrasse|eel) (?:\\w+ ){0,2}(?:on|off) the (?:floor|carpet|ground)',
        ],
      ],
    },
  ],
  'oxygen loss': [
    {
      all: [
        FISH,
        [
          'gasp(?:ing|s)?',
          'gulping',
          'panting',
          'suffocat\\w*',
          '(?:at|near|on) (?:the )?(?:surface|top)(?: of the (?:tank|water))? (?:breathing|gasping|panting)',
          'breath\\w* (?:\\w+ ){0,3}(?:at|near) (?:the )?(?:surface|top)',
          '(?:hang\\w*|staying|stuck|gather\\w*|all|both|up) (?:\\w+ ){0,2}(?:at|near|by) (?:the )?(?:surface|top)(?: of the (?:tank|water))? (?:with )?(?:\\w+ )?mouths? (?:\\w+ )?open',
          'mouths? open (?:at|near) (?:the )?(?:surface|top)',
          'sucking (?:for )?air',
          "(?:can'?t|cannot|can not|struggling to) breathe",
        ],
      ],
      not: ['seahorses?'],
    },
    { all: [['no', 'low', 'lack of'], ['oxygen', 'o2'], FISH] },
    { all: [['all', 'every\\w*', 'both'], FISH, ['breathing (?:\\w+ )?(?:hard|heav\\w*|fast|rapid\\w*)']] },
    {
      all: [
        ['pumps?', 'return', 'wavemakers?', 'powerheads?'],
        ['(?:both |all |have |has |just )*(?:stopped|died|dead|failed|quit)'],
        [...FISH, 'hours?', 'overnight', 'since'],
      ],
      not: ['dos\\w+ pump', 'air pump for', 'feed\\w*'],
    },
  ],
  overdose: [
    {
      all: [
        ['spill\\w*', 'spilt', 'dump(?:ed|s)', 'tipped', 'knocked'],
        [...DOSED, 'two[- ]part'],
        ['(?:in|into) (?:the |my |our )?(?:\\w+ )?(?:tank|sump|water|display|aquarium|overflow|reef)'],
      ],
      not: ['can i', 'should i', 'how (?:do|to|much)', 'slowly', 'floor'],
    },
    {
      all: [
        [
          'over ?dos(?:e|ed|ing)',
          'dosed (?:way |far )?too much',
          'double dosed',
          '(?:doser|dosing (?:pump|head|unit)|auto ?doser|(?:kalk\\w*|calcium) (?:reactor|stirrer|doser)) (?:has |just |got |is |was |went \\w+ and |stuck (?:on )?(?:and )?|failed and )*(?:stuck|ran (?:on|all night|away|non ?stop)|went (?:crazy|nuts|haywire|mad|wild)|malfunction\\w*|dumped|emptied|dosed (?:the )?(?:whole|all|everything)|kept (?:on )?(?:running|dosing|going)|(?:would|will) not stop)',
          '(?:dumped|emptied|siphoned|poured) (?:in )?(?:the |a |my )?(?:whole|entire|all|alk|kalk\\w*)',
          '(?:added|poured|put|tipped|dumped|dosed)(?: in)? (?:way |far )?too much',
          '(?:two|three|four|ten|five|twenty|\\d+) ?(?:times|x) (?:too much|the (?:\\w+ )?(?:dose|amount)|as much)',
          'twice the dose',
          '(?:accidentally|mistakenly) (?:dosed|added|dumped)',
          'emptied (?:itself|into|(?:\\w+ ){1,5}into)',
          '(?:dosed|added) \\d+ ?(?:ml|g|l|cups?) (?:of )?(?:\\w+ )?instead of',
          'doser (?:\\w+ ){0,3}emptied',
          'too much \\w+ in (?:the |my )?(?:tank|water|sump)',
          'too much \\w+ (?:dosed|added|poured)',
          '(?:way |far )?too much (?:\\w+ ){1,2}(?:went|got|ran|poured|flowed|dripped) in',
        ],
        DOSED,
      ],
      not: [
        'is (?:it|that|this|\\d+) too much',
        'how much is too much',
        'use[sd]? too much',
        "won'?t overdose",
        'without overdos\\w*',
        'can (?:i|you) overdose',
        'scared of (?:an )?overdos\\w*',
      ],
    },
  ],
  'salinity crash': [
    {
      all: [
        [
          'salinity (?:has |just |suddenly )?(?:crash\\w*|plummet\\w*|tanked)',
          '(?:ato|auto ?top ?off|top ?off|float (?:switch|valve)) (?:has |got |was |just |is |kept )*(?:stuck|dumped|jam(?:med|s)|kept (?:on )?running|overflowed|emptied|ran all night|failed|overfilled|malfunction\\w*|ran on|running|broke)',
          '(?:left|forgot) (?:the |my )?(?:ro|rodi|ro ?di|top ?off|tap|hose|fresh ?water|ato)(?: water| unit)? (?:\\w+ ){0,2}(?:running|on|open)(?= .*(?:tank|sump|reef|salinity|sg))',
          '(?:filled|topped|changed) (?:it |the tank )?(?:up |off )?with (?:fresh|ro|tap|rodi) ?(?:water)? (?:by mistake|by accident|instead)',
          '(?:added|poured|dumped|put) (?:dry )?salt (?:straight|directly|right) (?:in|into)',
        ],
      ],
      not: ['can i', 'should i', 'what if'],
    },
  ],
  overheating: [
    {
      all: [
        [
          'heater (?:is |got |has |was )?(?:been )?stuck(?: on)?',
          "heater (?:just )?(?:won'?t|will not|wouldn'?t|doesn'?t|didn'?t) (?:turn|shut|switch|go) off",
          '(?:temp(?:erature)?|tank|water) (?:has |just )?(?:shot|spiked|jumped|climbed|went) (?:way )?up to',
          'over ?heat(?:ed|ing|s)',
          '(?:tank|water) (?:is |was |got |getting |too |way |so |really )+(?:boiling |burning )?(?:hot|warm)(?! (?:stuff|enough))',
          'chiller (?:has |just |is |was )*(?:died|dead|broke|broken|failed|stopped|quit|out|not (?:working|cooling))',
          'heat ?wave (?:here|now|today|and)',
          '(?:a/?c|air ?con\\w*(?: unit)?) (?:has |just |is )*(?:died|broke|failed|stopped|out|quit|dead)',
        ],
      ],
      not: ['pumps? (?:is |are )?over ?heat\\w*', 'lights? over ?heat\\w*', 'driver over ?heat\\w*'],
    },
  ],
  'cold water': [
    {
      all: [
        [
          'heater (?:has |just |is |was )*(?:died|dead|broken?|fail(?:ed|ing)?|stopped|quit|unplugged|not (?:working|heating|on))',
          'heating (?:is |has |went |just )*(?:out|off|died|broke|failed)',
          '(?:tank|water) (?:is |was |got |getting |too |way |so |really |freezing )+cold',
          '(?:tank|water) (?:is |was )?freezing',
          'boiler (?:died|broke)',
        ],
      ],
      not: ['in the box', 'return it', 'refund', 'warranty'],
    },
  ],
  ammonia: [
    {
      all: [
        ['ammonia'],
        [
          'spik(?:e|ed|ing)',
          'through the roof',
          'poison\\w*',
          'burn(?:s|ing)?',
          'shot up',
          'emergency',
          '(?:very|really|super|so|extremely) high',
          'sky ?high',
          'off the (?:charts?|scale)',
        ],
      ],
      not: ['cycl\\w*', 'fishless', 'bleach'],
    },
  ],
} as const satisfies Partial<Record<UrgentId, readonly Way[]>>;
