import type { Way } from '../../said.ts';
import { ANIMAL, CAUSTIC, FELT, FAMILY, ILL, PET, SURE_PERSON } from '../person-parts.ts';

const DRINKS = String.raw`(?:drank|drunk) (?:a |an |my |some |too much |the )?(?:\w+ )?(?:beers?|coffee|tea|wine|whisky|soda|milk|juice)`;

/** Swallowed or breathed in, by people or pets. */
export const poisoned: readonly Way[] = [
  {
    all: [
      [
        'drank',
        '(?:have|has|had|was|got) drunk',
        'drinking (?:the |from the |out of the )(?:tank|sump|lime|kalk)\\w*',
      ],
    ],
    not: [DRINKS, 'how (?:to|do i|can i) (?:stop|keep|prevent)'],
  },
  {
    all: [
      [
        String.raw`(?:${FAMILY}|${PET}) (?:he |she |it |has |just |accidentally |have )*(?:drinks?|drank|drunk|eats?|ate|eaten|lick(?:s|ed)?|suck(?:s|ed)? on|put (?:\w+ ){1,5}in (?:his |her |their |its |the )?mouth)`,
      ],
      [
        CAUSTIC,
        'bottles?',
        'liquids?',
        'powder',
        'test',
        'chemicals?',
        'tank',
        'sump',
        'salt',
        'corals?',
        'frags?',
        'meds?',
        'rocks?',
        'bucket',
        'additives?',
        'supplements?',
        'solution',
      ],
    ],
    not: [
      String.raw`(?:can|could|do|does|did|will|would|should|may|if|let|stop) (?:\w+ ){0,3}(?:drink|eat|lick|suck)s?`,
      DRINKS,
    ],
  },
  {
    all: [['swallow(?:ed|s)?', 'ingested', 'mouthful of']],
    not: [
      String.raw`${ANIMAL}s? (?:has |have |just |had |is |got )?(?:\w+ )?(?:swallow(?:ed|s)?|ingested|a mouthful)`,
    ],
  },
  {
    all: [
      [String.raw`${SURE_PERSON} (?:just |has |have |had )?(?:ate|eaten|chewed|licked|bit into)`],
      [
        CAUSTIC,
        'corals?',
        'frags?',
        'zoas?',
        'palys?',
        'zoo?[ae]nth\\w*',
        'powder',
        'salt(?: mix)?(?! water)',
        'reef salt',
        'test kit',
        'supplement',
        'medicine',
        'medication',
        'carbon',
        'media',
        'resin',
        'snails?',
        'shells?',
        'rocks?',
      ],
    ],
    not: [String.raw`my ${ANIMAL}s? (?:just |has )?ate`],
  },
  {
    all: [
      [PET],
      [
        'ate',
        'eaten',
        'lick(?:ed|s|ing)',
        'dr[au]nk',
        'drinks',
        'lapped',
        'chewed',
        'chewing',
        'swallowed',
        'vomit\\w*',
        'throwing up',
        'drool\\w*',
        'foaming',
        'bit(?:ing|ten)?',
        'limp',
        'stagger\\w*',
        'collapsed',
        'seizures?',
        'shak(?:ing|es)',
        'shocked',
        'poison\\w*',
        'gasp\\w*',
        'wobbl\\w*',
        'twitch\\w*',
        'letharg\\w*',
        'unsteady',
        'sick',
        'convuls\\w*',
      ],
    ],
    not: [
      '(?:without|so (?:the|my)|keep(?:ing)?|(?:how to|to|please) stop(?:ping)?|prevent\\w*|can (?:my|the|a)|will (?:my|the|a)|safe for)',
      'sick of',
      String.raw`${PET} (?:\w+ )?(?:ate|swallowed|licked) (?:a |my |the |our )?(?:\w+ )?(?:clown\w*|fish(?: food)?(?! med| treat| tablet| additive)|tang|goby|shrimp)`,
      'dog ?face',
      'cat ?fish',
      'rabbit ?fish',
    ],
  },
  {
    all: [
      [
        'inhaled',
        'breathed in',
        'breath(?:ed|ing) (?:in )?(?:the |some |a lot of |all )*(?:\\w+ )?(?:dust|powder|fumes|gas|steam|smoke|vapou?rs?)',
        'carbon monoxide',
        'co alarm',
      ],
    ],
    not: [
      '(?:avoid|not) (?:inhal\\w*|breath\\w*)',
      '(?:which|best|buy|get|need) (?:an? )?(?:carbon monoxide|co)',
    ],
  },
  {
    all: [
      ['sipped', 'a sip of', 'swigged', 'gargled', '(?:took|had) a (?:gulp|swig|mouthful)'],
      [CAUSTIC, 'tank', 'sump', 'liquid', 'solution', 'chemicals?', 'bottle'],
    ],
    not: [DRINKS],
  },
  {
    all: [
      [
        String.raw`(?:i'?m|i am|i was|am i|we are|we'?re|i (?:think|feel|got|have been)(?: i| like)?(?: am|'?m| was| got| have been)?) (?:being |been )?poisoned`,
        'feel(?:s|ing)? faint',
      ],
    ],
  },
  {
    all: [
      ['mix(?:ed|ing)', 'poured', 'added'],
      ['bleach'],
      ['vinegar', 'acid', 'muriatic', 'citric', 'ammonia'],
    ],
    not: ['(?:can|could|should|may) i', 'is it (?:ok|okay|safe)', 'never', 'how'],
  },
  {
    all: [
      [
        'bleach',
        'chlorine',
        'muriatic',
        'hydrochloric',
        'acid',
        'vinegar',
        'ozone',
        'formalin',
        'chemicals?',
        'sprayed',
      ],
      [
        FELT,
        String.raw`(?:i|we|she|he) (?:now |all |both |really |just )*(?:feel|feels|feeling|felt) (?:\w+ )?(?:sick|ill|unwell|sleepy|weak|faint)`,
        String.raw`(?:together|mixed|fumes|smell) (?:\w+ ){0,3}(?:feel|feels|feeling|felt) (?:\w+ )?(?:sick|ill|unwell|sleepy|weak|faint)`,
        String.raw`(?:my |our )?(?:lungs?|throat|eyes?|nose) (?:is |are |keeps? |\w+ing and )?(?:burn\w*|sting\w*|hurt\w*|water\w*)`,
      ],
    ],
    not: [String.raw`${ANIMAL}s? (?:\w+ ){0,3}(?:trouble|difficulty|hard|cough\w*|red|swollen|cloudy)`],
  },
  {
    all: [
      ['fumes', 'smoke', 'gas', 'generator', 'grill', 'charcoal', 'camping stove'],
      [
        FELT,
        ILL,
        String.raw`(?:feel|feeling) (?:\w+ )?(?:sick|ill|unwell|sleepy)`,
        'smells? (?:awful|sharp|terrible)',
      ],
    ],
  },
  {
    all: [
      ['generator', 'grill', 'charcoal', 'camping stove'],
      [
        '(?:run|runs|running|started|on|going|burning|is|it) (?:\\w+ )?(?:inside|indoors|in (?:the|my|our) (?:house|garage|basement|kitchen|living room|room|apartment|flat|hallway))',
      ],
    ],
  },
];
