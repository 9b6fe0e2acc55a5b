import type { Way } from '../../said.ts';

/** Water where it should not be. */
export const flood: readonly Way[] = [
  {
    all: [
      ['flood(?:ed|ing)?'],
      [
        'floor',
        'room',
        'house',
        'carpet',
        'kitchen',
        'basement',
        'living room',
        'downstairs',
        'everywhere',
        'sump',
        'tank',
        'socket',
        'plugs?',
      ],
    ],
    not: ['flood ?lights?', 'flooded (?:my |the )?(?:display|tank|sump) with'],
  },
  {
    all: [
      ['water'],
      [
        '(?:all over|on) (?:the |my |our )?(?:floor|carpet|wall sockets?|sockets?|plugs?|power strip|cables?)',
        'everywhere(?! is| in)',
        'ceiling',
      ],
    ],
    not: ['(?:algae|cyano\\w*|flow|moves?|move) everywhere'],
  },
  {
    all: [
      [
        String.raw`(?:floor|carpet|rug|ceiling|floorboards?|laminate) (?:is |was |are |got |gets |all |getting |completely |totally |under |around |by |near )*(?:soaked|soaking|wet|flooded|drenched|sopping|under water)`,
        String.raw`(?:soaked|soaking|wet|flooded) (?:floor|carpet|rug|ceiling)`,
        String.raw`\d+ ?(?:gal(?:lons?)?|l|lit(?:er|re)s?) (?:of (?:salt ?)?water )?(?:all )?(?:over|on) (?:the |my |our )?(?:\w+ )?(?:floor|carpet|rug)`,
        String.raw`(?:tank|sump|aquarium) (?:\w+ )?(?:emptied|drained) (?:itself )?(?:on|onto|all over|out)`,
      ],
    ],
    not: [
      'can (?:a|the|my) floor',
      'hold',
      'support',
      'weigh\\w*',
      'how (?:do|can|to)',
      'what if',
      'without',
      'water change',
      'normal',
      'stop(?:ping)? (?:the )?(?:floor|carpet)',
    ],
  },
  {
    all: [
      [
        String.raw`water (?:is |was |keeps |coming |pooling |collecting |all )*(?:under|underneath|beneath|behind|around) (?:the |my )?(?:fish )?(?:tank|stand|sump|aquarium|cabinet)`,
        String.raw`(?:hose|pipe|tub(?:e|ing)|return|pump|line|nozzle|fitting|union|reactor) (?:\w+ ){0,6}(?:sprayed|soaked|drenched|flooded) (?:the |my )?(?:whole |entire )?(?:room|wall|floor|kitchen|house|everything|carpet)`,
      ],
    ],
    not: ['flow', 'if', 'can', 'how'],
  },
  {
    all: [
      [
        'leak\\w*',
        'drip(?:s|ping|ped)',
        'spray(?:ing|s)',
        'burst',
        'pour(?:ing|ed)',
        'flood\\w*',
        'spill\\w*',
        'gush\\w*',
        'over ?flow\\w*',
        'seep\\w*',
      ],
      [
        'floor\\w*',
        'carpet',
        'rug',
        'ceiling',
        'downstairs',
        'cupboard',
        'hallway',
        'living room',
        'bedroom',
        '(?:neighbou?r|flat|apartment) (?:below|downstairs|under)',
        '(?:into|all over) (?:the |my )?(?:\\w+ )?(?:kitchen|room|house|basement|wall)',
      ],
      [
        'water',
        'tank',
        'sump',
        'aquarium',
        'bulkhead',
        'pipes?',
        'pipework',
        'hose',
        'tub(?:e|ing)',
        'plumbing',
        'overflow',
        'union',
        'valve',
        'ro',
        'rodi',
        'ro ?di',
        'canister',
        'skimmer',
        'ato',
        'reservoir',
        'bucket',
        'barrel',
        'drain',
        'return',
        'pump',
        'seam',
        'reactor',
        'chiller',
      ],
    ],
    not: [
      'how (?:do|can|to|would)',
      'what if',
      'prevent\\w*',
      'avoid',
      'worried',
      'can (?:i|a|the|my)',
      'will (?:it|a|the|my)',
      'would',
      'could',
      'might',
      'flood ?lights?',
      'alarm',
      'sensor',
      'detector',
      'in case',
      'normal',
      'a (?:little|tiny) bit',
    ],
  },
  {
    all: [
      [
        String.raw`(?:sump|tank|skimmer|overflow|return|aquarium|bucket) (?:is |has |just |keeps |was |box |started )*(?:over ?flow(?:ed|s|ing)?|spill(?:ed|ing|s)?|running over)`,
      ],
    ],
    not: [
      'overflow(?:ed|s)? (?:the |its |into (?:the |a |its ))?(?:\\w+ )?(?:cup|bucket|container|collection)',
      'cup',
      'how (?:do|can|to)',
      'what if',
      'without',
    ],
  },
  {
    all: [
      ['water'],
      [
        '(?:pouring|spilling|gushing|running|leaking|coming|dripping) (?:out|over|down|onto|through|from (?:the|my|under) (?:\\w+ )?(?:tank|stand|sump|cabinet|overflow))',
      ],
    ],
    not: ['pipe|return|nozzle|spout|tap|ro ?di|filter|slowly'],
  },
  {
    all: [
      ['leak', 'leaks', 'leaking', 'crack', 'puddle'],
      [
        'sprung a leak',
        String.raw`(?:in|from|under|on) (?:my |the |our )?(?:\w+ )?(?:tank|sump|aquarium|glass|stand)`,
      ],
    ],
    not: ['(?:how|what) (?:do|can|to|if)', 'salt creep', 'crack in the stand', 'test\\w*'],
  },
  {
    all: [
      [
        String.raw`(?:light|lamp|fixture|hair ?dryer|cable|plug|fan|extension cord|power strip|phone charger) (?:just |has )?(?:fell|dropped|slipped|is) (?:in|into)(?: the| my)? (?:tank|water|sump)`,
        '(?:cord|cable|wire)s? (?:is |are )?(?:\\w+ )?(?:frayed|bare|exposed|cut|chewed)',
      ],
    ],
  },
  {
    all: [
      [
        String.raw`(?:tank|sump|seam|glass|silicone|aquarium)(?: (?:is|has|just|started|seam))* (?:(?:sprung|got|has) a leak|leak(?:ing|ed|s)?|crack(?:ed|ing)?|burst|split|broke|shattered|exploded)`,
      ],
    ],
    not: ['heater', 'thermometer', 'test tube', 'vial', 'cuvette'],
  },
  {
    all: [
      ['wet', 'dripping', 'water', 'soaked'],
      ['power strip', 'extension (?:lead|cord)', 'sockets?', 'breaker', 'outlet'],
    ],
    not: ['wet skim\\w*', '(?:what|which|best|buy|need|safe|mount|place|where|how)'],
  },
];
