import type { Way } from '../../said.ts';
import {
  ANIMAL,
  ASKED,
  BODY,
  CAUSTIC,
  FAMILY,
  LIMB,
  MY_BODY,
  ON_BODY,
  PERSON,
  VENOMOUS,
} from '../person-parts.ts';

/** Eyes, skin, wounds, stings and bites. */
export const wound: readonly Way[] = [
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
