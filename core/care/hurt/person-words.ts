import { saidIn, type Way } from '../said.ts';
import {
  ANIMAL,
  ASKED,
  BODY,
  CAUSTIC,
  FELT,
  FAMILY,
  HANDLED,
  ILL,
  LIMB,
  MY_BODY,
  ON_BODY,
  PERSON,
  PET,
  SURE_PERSON,
  VENOMOUS,
} from './person-parts.ts';
import { families } from './families.ts';
import { plainlyTold } from './plainly-told.ts';

const DRINKS = String.raw`(?:drank|drunk) (?:a |an |my |some |too much |the )?(?:\w+ )?(?:beers?|coffee|tea|wine|whisky|soda|milk|juice)`;

/** Mains through a body. */
const shock: readonly Way[] = [
  { all: [['electrocuted', '(?:electric|electrical) shock']], not: ['(?:avoid|prevent|risk of|hazard of)'] },
  {
    all: [
      [
        String.raw`(?:feel|felt|feeling|get|got|getting|gave me|gives me|gets me) (?:an? )?(?:little |small |mild |big |electric )?(?:tingl\w*|zaps?|shocks?|buzz|jolts?)`,
      ],
    ],
    not: ['(?:can|could|will|would|might) (?:i|you|we|it|they) (?:\\w+ )?(?:get|feel|give)'],
  },
  {
    all: [
      [String.raw`(?:feels?|felt|feeling) (?:\w+ ){0,5}(?:electricity|electric(?! blue)|current|voltage)`],
    ],
    not: ['from the (?:pump|wavemaker|powerhead)'],
  },
  {
    all: [[String.raw`(?:got|get|gets|getting|been|was|were|am|being|just) (?:shocked|zapped)`]],
    not: [
      String.raw`${ANIMAL}s? (?:\w+ ){0,2}(?:shocked|zapped)`,
      'shocked (?:how|that|when|to (?:see|hear|find))',
      'shocked (?:by|at|to see) (?:the |how |that )?(?:\\w+ )?(?:prices?|cost|bill|growth|color|colour|size|much|how)',
    ],
  },
  {
    all: [
      [
        String.raw`(?:shocks|shocked|zaps|zapped|shocking|zapping) (?:me|us|him|my (?!${ANIMAL}|coral|tank|reef)\w+)`,
      ],
    ],
  },
  {
    all: [
      [MY_BODY, String.raw`${LIMB}`, 'touch\\w*'],
      [
        String.raw`(?:it|tank|water|lamp|light|fixture|pump|heater|sump|metal|hood) (?:just |always |really )*(?:zaps?|zapped|shocks?|shocked|gives (?:off )?(?:a )?(?:shocks?|jolts?|tingles?))`,
      ],
    ],
    not: [String.raw`(?:shock|zap)\w* (?:my |the )?(?:${ANIMAL}|acro|sps|lps)`],
  },
  {
    all: [
      [
        String.raw`(?:shock(?:s|ed)?|zap(?:s|ped)?) (?:when|whenever|every ?time|as|while) (?:i|we|he|she|you|my \w+) (?:\w+ )?(?:touch|put|reach|stick|clean)\w*`,
      ],
    ],
  },
  {
    all: [
      ['tingl\\w*', 'prickl\\w*'],
      [MY_BODY, 'water', 'tank', 'i'],
    ],
    not: ['lights?'],
  },
];

/** Eyes, skin, wounds, stings and bites. */
const wound: readonly Way[] = [
  {
    all: [
      [
        String.raw`(?:in|into|got in) (?:my|his|her|their|the) (?:\w+ )?(?:eye(?:s|balls?)?|mouth|face)`,
        '(?:juice|slime|water|liquid|salt|powder|dust|bleach|acid|kalk|lime|peroxide|stuff|something|solution) (?:\\w+ )?(?:in|into) (?:one |both )?eyes?',
      ],
    ],
  },
  {
    all: [
      [String.raw`(?:my|our|wife'?s|son'?s|daughter'?s|husband'?s|kid'?s) (?:left |right |both )?eyes?`],
      [
        'burn\\w*',
        'sting\\w*',
        'stung',
        'red',
        'swollen',
        'swell\\w*',
        'pain\\w*',
        'hurt\\w*',
        'sore',
        'itch\\w*',
        'squirt\\w*',
        'splash\\w*',
        'blurr\\w*',
      ],
    ],
    not: [
      '(?:bad|harmful|dangerous|safe|hard) (?:for|on) (?:my|your) eyes?',
      '(?:does|will|can|do) (?:\\w+ ){1,3}(?:hurt|burn)',
    ],
  },
  {
    all: [
      [MY_BODY],
      [
        String.raw`numb\w*|swoll?en|swell\w*|puffy|red and|turn(?:ed|ing) (?:red|black|purple|white|blue)|rash|hives|infect\w*|bleed\w*|blister\w*|itch\w*|lump|pus|burn(?:s|ed|t|ing)?|paraly[sz]ed|hurts?|hurting|pain\w*|throbbing|stabb\w*|pok(?:ed|es)|prick\w*|pierced|spines?|sliced|gash|red line|splash\w*|spill\w*|dripp\w*|dust|squirt\w*`,
      ],
    ],
    not: [
      String.raw`${ASKED}`,
      'sun ?burn',
      'keep (?:\\w+ ){1,2}from',
      'burn(?:ed|t)? (?:out|my (?:dinner|food))',
      'will (?:it|that|this|they) (?:hurt|burn)',
    ],
  },
  {
    all: [
      [
        String.raw`^(?:help )?(?:the )?${BODY} (?:is|are|feels?|got|went|looks?) (?:\w+ )?(?:numb|swollen|red|burning|bleeding|infected|tingling)`,
      ],
    ],
  },
  {
    all: [
      [`glued (?:${MY_BODY})`, 'skin (?:ripped|torn|tore|peeled|came) off'],
      ['glue\\w*', 'skin'],
    ],
    not: [ANIMAL],
  },
  {
    all: [
      [
        String.raw`(?:rash|lump|bump|sores?|blisters?|hives|burns?|cuts?|stings?|bites?|spines?|splinters?) ${ON_BODY}`,
      ],
    ],
    not: [ASKED, '(?:what|which|best) gloves'],
  },
  {
    all: [
      [
        String.raw`(?:cut|sliced|stabbed|burned|burnt|hurt|injured|punctured) (?:myself|himself|herself|me|${MY_BODY})`,
      ],
    ],
  },
  {
    all: [
      [
        String.raw`(?:(?:infected|swollen|numb|burning|bleeding) ${BODY}|${BODY} (?:\w+ )?(?:infected|infection))`,
      ],
      [PERSON, 'tank', 'aquarium', 'fish', 'coral', 'rock'],
    ],
    not: [
      String.raw`${ANIMAL}s?'?s? (?:\w+ ){0,3}(?:infected|swollen|burning|bleeding)`,
      String.raw`${ANIMAL} (?:with|has) (?:a |an )?`,
    ],
  },
  {
    all: [[String.raw`${CAUSTIC} (?:[\w.%]+ )?(?:in|on|into|onto) (?:\w+ )?${BODY}`]],
    not: [ASKED, 'never', 'avoid'],
  },
  {
    all: [[String.raw`(?:bleeding|infected|numb)`], [PERSON]],
    not: [
      String.raw`${ANIMAL}s? (?:\w+ ){0,2}(?:bleeding|infected|numb)`,
      'bleeding (?:the |air|out)',
      '(?:infected|infest\\w*) (?:with|by|coral|fish|tank)',
    ],
  },
  {
    all: [
      [CAUSTIC],
      [
        String.raw`(?:splash\w*|spill\w*|spilt|got|get|burn\w*|dripp\w*|squirt\w*|dust|powder|sprayed) (?:\w+ ){0,4}${ON_BODY}|burn\w* (?:${MY_BODY}|me|him)|(?:my|his|her) skin`,
      ],
    ],
    not: [ASKED, 'glue(?:d)? on'],
  },
  {
    all: [
      [
        String.raw`${PERSON} (?:just |got |gets |was |were |have been |been |got badly )*(?:stung|bitten|stabbed|poked|pricked|(?:got|been|was) bit)`,
        String.raw`^(?:help[ ,!]*|just |got |been |i )*(?:bit|bitten|stung|stabbed|poked|pricked) (?:by|on|in) (?:an?|the|my)`,
        String.raw`(?:stung|bit|stabbed|poked|pricked|spined) (?:me|us|him|my (?:wife|husband|son|daughter|kid|child|friend|girlfriend|boyfriend|toddler)|by a (?:lion|stone|scorpion)\w*)`,
      ],
    ],
    not: [String.raw`(?:clown\w*|damsels?|fish|blenny|tang) (?:\w+ )?bit me`],
  },
  {
    all: [
      [
        String.raw`${VENOMOUS} (?:(?:in|of) (?:my|the|our) \w+ )?(?:\w+ )?(?:bit|stung|stabbed|poked|pricked|got) (?:me|him|us|${MY_BODY}|my \w+'?s? ${BODY})`,
      ],
    ],
  },
  {
    all: [
      [
        String.raw`(?:lion ?fish|scorpion ?fish|stone ?fish|sting ?ray|cone snail|jelly ?fish|(?:sea )?urchin|bristle ?worm|fire ?worm|rabbit ?fish|fox ?face|octopus) (?:sting|stung|spines?|bite|poke|quills?)s?`,
      ],
    ],
    not: [
      ASKED,
      '(?:what|which|how|when|if|avoid|prevent|spines? (?:looks?|are|is|were)|shed\\w*|los\\w*|dropp\\w*|fall\\w*)',
      'my (?:urchin|lion ?fish|fox ?face|rabbit ?fish|stone ?fish)',
    ],
  },
  {
    all: [
      [
        String.raw`^(?:help[ ,!]*|just |got |been |i )*(?:stung|bitten|bit|poked|pricked|stabbed|spined) (?:by|from) (?:an? |the |my )?${VENOMOUS}`,
        String.raw`${BODY} (?:is |are |got |went |all |really |so |badly )*(?:swollen|swelling|swelled|puffy|numb|paraly[sz]ed) (?:up |\w+ ){0,4}(?:after|from|since|because of) (?:an? |the |my |touching |handling )*${VENOMOUS}`,
      ],
    ],
  },
  {
    all: [
      [
        String.raw`(?:cut|sliced|slashed|gashed|smash\w*|crush\w*|broke|jammed|pierced|split|burn(?:t|ed)|stabbed|pinched|scraped|punctured) (?:open )?(?:my |his |her |a |the |right |left |index )*${LIMB}`,
      ],
    ],
    not: [ASKED, 'gloves?'],
  },
  {
    all: [
      [
        String.raw`(?:skin|throat|lips?|eyes?|nose|face|${LIMB}) (?:is |are |was |now |very |really |starts? (?:to )?|started (?:to )?|feels? |still |so |all )*(?:burn(?:s|ing|ed)?|sting(?:s|ing)?|itch\w*|hurts?|hurting|painful|swell\w*|swollen|tingl\w*|throb\w*)`,
      ],
      [PERSON, 'touch(?:ed|ing)?', 'handl(?:ed|ing)', 'cut(?:ting)?', 'fumes'],
    ],
    not: [
      ASKED,
      String.raw`${ANIMAL}s?'?s? (?:\w+ )?(?:skin|throat|lips?|eyes?|nose|face)`,
      '(?:acro|monti|leather|zoa)\\w* skin',
      String.raw`will (?:\w+ ){0,3}(?:sting|burn|hurt)`,
    ],
  },
  {
    all: [
      ['needles?', 'spines?', 'splinters?', 'glass', 'bristles?', 'thorns?', 'shards?', 'hooks?', 'piece'],
      [String.raw`(?:in|into|under|through) (?:my|his|her) (?:\w+ )?(?:${BODY}|nail|skin)`],
    ],
    not: [ASKED, 'would', 'could'],
  },
  {
    all: [
      [
        String.raw`(?:cut|wound|scrape|scratch|graze|sting|bite)s?(?: is| was| looks?| feels?| got| on ${MY_BODY}| still| now| all| really)* (?:hot|red|infected|swollen|weeping|oozing|warm|throbbing|getting worse|not healing|(?:won'?t|will not|does ?n'?t) heal)`,
        'scald(?:ed|ing)?',
        'fell off (?:the |a |my )?(?:ladder|stool|chair|step\\w*)',
      ],
    ],
    not: [
      ASKED,
      String.raw`${ANIMAL}s? (?:\w+ )?(?:has|have|with|got|had) `,
      'my (?:tang|clown|wrasse|fish|angel|puffer)\\w* ',
    ],
  },
  {
    all: [
      [FAMILY],
      ['stuck', 'put', 'touch\\w*', 'grabb\\w*', 'fell', 'cut', 'reached', 'poked', 'hands?', 'fingers?'],
      [
        'scream\\w*',
        'crying',
        'cries',
        'cried',
        'wailing',
        'in (?:so much |a lot of |great )?pain',
        'hurts?',
        'bleed\\w*',
      ],
    ],
    not: [ASKED, 'scream\\w* (?:for|with) (?:joy|food)'],
  },
  {
    all: [
      [
        '(?:stepped|fell|sat) on (?:a |an |the |my )?(?:sea )?(?:urchin|stone ?fish|sting ?ray|lion ?fish|fire coral)',
      ],
    ],
  },
];

/** Swallowed or breathed in, by people or pets. */
const poisoned: readonly Way[] = [
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

/** Ill after rock, zoanthids or slime, or simply down. */
const ill: readonly Way[] = [
  {
    all: [
      [
        '(?:metallic|bitter|metal) taste',
        'tast(?:e|es|ed|ing) (?:of |like )?(?:metal(?:lic)?|penn(?:y|ies)|coins?|copper|blood)',
        'palytoxin poison\\w*',
        'palytoxin (?:is )?making (?:me|us)',
      ],
    ],
  },
  {
    all: [
      [
        "(?:cannot|can'?t|can not|could ?n'?t|couldn'?t|struggling to|hard to) breathe?(?: properly| well| right)?",
      ],
    ],
    not: [String.raw`${ANIMAL}s? (?:\w+ ){0,2}(?:cannot|can'?t|can not|struggling to|hard to) breathe?`],
  },
  {
    all: [[FELT], [HANDLED]],
    not: [
      String.raw`${ANIMAL}s? (?:\w+ ){0,3}(?:trouble|difficulty|hard|cough\w*|red|swollen|cloudy|rash|sweating)`,
      String.raw`\w+'s eyes?`,
    ],
  },
  {
    all: [
      [
        String.raw`${PERSON} (?:is |are |am |was |were |feels? |feeling |felt |got |get |gets |getting |became |been |have been |has been |have |has |started |all |really |so |very |both |pretty |suddenly |now |just |a )*${ILL}(?! of| frags?| corals?| tank| fish)`,
      ],
      [HANDLED],
    ],
    not: [String.raw`${ANIMAL}s? (?:\w+ ){0,2}(?:sick|ill|weak|cough\w*|shak\w*)`],
  },
  { all: [['numb']] },
  {
    all: [
      [
        'throwing up',
        'threw up',
        'thrown up',
        'puk(?:ing|ed)',
        'vomit\\w*',
        'seizures?',
        'convuls\\w*',
        'slurr\\w*',
        "(?:can'?t|cannot|could ?n'?t) (?:talk|speak|walk|stand up|see (?:right|properly|clearly|well|out of)|move (?:my|his|her))",
        'welts?',
        'full of pus',
        'hit (?:his|her|my|their) head',
        'concuss\\w*',
        'unconscious',
        'unresponsive',
        'heart attack',
        'stroke',
        'anaphyla\\w*',
        'allergic reaction',
        'third degree',
        'red (?:streaks?|lines?) (?:\\w+ )?(?:up|on|going|down)',
      ],
    ],
    not: [
      String.raw`${ANIMAL}s? (?:\w+ ){0,5}(?:throw|threw|thrown|puk|vomit|seiz|convuls|unresponsive|unconscious|slurr)\w*`,
      'cat ?fish',
      'brush ?stroke',
      'red lines? on (?:the|my) (?:coral|acro|shrimp|chart|graph)\\w*',
      'my (?:coral|acro|sps)\\w* (?:can|got|had|has)',
    ],
  },
  {
    all: [
      [
        String.raw`${PERSON} (?:is |was |has |just |suddenly |have )*(?:collapsed|passed out|fainted|unconscious|unresponsive|not breathing|seizing)`,
        String.raw`(?:he|she|wife|husband|son|daughter|kid|dad|mom|mum|friend|partner) (?:isn'?t|is not|stopped) breathing`,
        String.raw`(?:wife|husband|son|daughter|kid|dad|mom|mum|friend|partner) is (?:lying )?on the (?:floor|ground)`,
      ],
    ],
    not: [String.raw`${ANIMAL}s?.{0,40}(?:he|she) `],
  },
  {
    all: [
      [
        String.raw`(?:my |our |the )(?:wife|husband|partner|son|daughter|kid|child|mother|father|mum|mom|dad|brother|sister|friend|boyfriend|girlfriend|neighbou?r|guest) (?:\w+ ){0,7}(?<!(?:fish|tanks?|frags?|rocks?|corals?|lights?|magnets?|it) )(?:f[ae]ll(?:s|en|ing)? (?:down|over|to the|unconscious)|(?:does |is |do |did )?(?:not|n't) (?:answer|respond|wak|mov)\w*|collaps\w*|lying (?:down|still)|blacked out)`,
        String.raw`${SURE_PERSON} (?:am |is |are |was |had to |ended up |went |rushed )+(?:in|to|at) (?:the )?(?:hospital|emergency room|er)(?! tank)`,
        '(?:called|calling|need) an ambulance',
      ],
    ],
    not: [String.raw`${ANIMAL}s?.{0,40}(?:he|she) `],
  },
  {
    all: [
      [
        String.raw`(?:tank|stand|glass|aquarium|light|lamp|rock) (?:has |just )?(?:fell|broke|burst|collapsed|shattered|exploded|tipped over|landed) on (?:me|us|him|(?:my |our )?(?:\w+ )?(?:kid|son|daughter|wife|husband|child|toddler|baby|foot|hand|leg|head)s?)`,
      ],
    ],
  },
];

/**
 * Whether a cleaned text speaks of a person or a pet that is hurt or ill: rather once too often. Animals of the tank that
 * swallow something, corals that get a shock of light and questions about what might hurt are left out.
 */
export function isPersonHurt(text: string): boolean {
  return tellsOfHurt(text) && !UNHURT.test(text);
}

const tellsOfHurt = saidIn([...shock, ...wound, ...poisoned, ...ill, ...plainlyTold, ...families]);

/** Said to have hurt nobody, or in a figure of speech. */
const UNHURT =
  /\b(?:(?:nobody|no ?one|none of us) (?:got|was|is|were|gets?)|some slack|stared at|from (?:his|her|its|their) own|daylight robbery)\b/;
