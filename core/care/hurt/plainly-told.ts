import type { Way } from '../said.ts';
import { ANIMAL, ASKED, BODY, CAUSTIC, HANDLED, ILL, MY_BODY, ON_BODY, PERSON, PET } from './person-parts.ts';

const ZOA = String.raw`(?:zoas?|zoo?[ae]nth\w*|palys?|palyth?oas?|palythoas?|polyps)`;
/** What bites, stabs, stings or pinches. */
const BITER = String.raw`(?:lion ?fish|volitans|scorpion\w*|stone ?fish|sting ?ray|rabbit ?fish|fox ?face|tangs?|trigger\w*|puffer\w*|eel|moray|octo(?:pus)?|urchin|diadema|anemone|nem|bta|carpet|coral|torch|hammer|elegance|galaxea|jelly\w*|tentacles?|man of war|hydroids?|crab|mantis\w*|angel\w*|worms?|cone snail|(?:frag )?saw|blade|scraper|scalpel|knife|razor)`;
const STRUCK = String.raw`(?:got|nailed|spiked|jabbed|stuck|chomped|nipped|nicked|clamped|latched|pinched|hit|bit|wrapped|spined|stabbed|cut|sliced|slashed|took a (?:\w+ )?(?:chunk|piece|bite|bit))`;
const HEAVY = String.raw`(?:tank|rocks?|live ?rock|stand|canopy|lid|light|lamp|fixture|bucket|barrel|glass|pump|chiller|salt bag|bag of salt)`;

/** What happened is plain although nobody is named, or the words are few. */
export const plainlyTold: readonly Way[] = [
  { all: [[String.raw`${PERSON} (?:\w+ ){0,2}(?:blacked out|keeled over)`]] },
  {
    all: [
      ['(?:current|electricity|voltage) (?:\\w+ ){0,2}in the (?:tank |sump )?water'],
      ['felt', 'feel', 'tingl\\w*', 'zap\\w*', 'touch\\w*'],
    ],
  },
  {
    all: [
      [String.raw`${PERSON}`],
      ['(?:touch|grabb|brush)\\w* (?:the |a |my )?(?:\\w+ )?(?:heater|lamp|bulb|halide|light)'],
      ['burns?', 'burnt', 'burned', 'blister\\w*'],
    ],
  },
  { all: [[String.raw`^(?:help |so |really |feeling |very )*${ILL}`], [HANDLED]] },
  {
    all: [
      [String.raw`(?:in|into) (?:a|an|my|his|her|the) (?:\w+ )?(?:cut|scratch|wound|scrape|graze)`],
      ['zoas?', 'palys?', 'zoo?[ae]nth\\w*', 'palyth\\w*', CAUSTIC, 'slime', 'goo', 'juice', 'tank water'],
    ],
    not: [ASKED],
  },
  {
    all: [
      [
        String.raw`(?:sprayed|squirted|splashed|spat|spit) (?:in |into |on |at )?(?:${MY_BODY}|me in the ${BODY}|me)`,
      ],
    ],
    not: [ASKED],
  },
  {
    all: [
      [
        String.raw`(?:stung|bitten|bit|stabbed|poked|pricked|pinched|punctured|spined) (?:${MY_BODY}|me (?:on|in) the ${BODY})`,
        String.raw`(?:quills|needles|spines?|bristles) (?:\w+ ){0,4}(?:${MY_BODY}|under (?:my|his|her) skin)`,
      ],
    ],
    not: [ASKED],
  },
  {
    all: [
      [
        String.raw`(?:${MY_BODY}) (?:\w+ ){0,2}(?:crush\w*|pinned|trapped|squash\w*|jammed|stuck (?:shut|together|under|to))`,
        String.raw`(?:glue|cyanoacrylate|epoxy)\w* (?:\w+ ){0,4}(?:${MY_BODY}|eyes?|eyelids?|lips?)`,
      ],
    ],
    not: [ASKED],
  },
  {
    all: [
      [
        'granuloma',
        'marinum',
        'vibrio',
        '(?:pus|redness|red streaks?) (?:\\w+ ){0,6}(?:cut|scrape|scratch|wound|sting|bite)',
        "(?:cut|scrape|scratch|wound|sting|bite|sore) (?:\\w+ ){0,8}(?:not|never|isn'?t|won'?t) (?:heal\\w*|clos\\w*)",
        '(?:redness|swelling) (?:\\w+ ){0,6}spread\\w*',
      ],
    ],
    not: [
      String.raw`${ANIMAL}s? (?:\w+ )?(?:has|have|with|got|had) `,
      'my (?:tang|clown|wrasse|fish|angel|puffer)\\w*',
    ],
  },
  {
    all: [
      [
        String.raw`hives (?:all|over|on|after|since|and|every)`,
        String.raw`(?:my|his|her) (?:tongue|lips?|throat|face) (?:is |are |feels? |has |got |started )?(?:\w+ )?(?:swell\w*|swollen|clos\w*|tight\w*|puff\w*)`,
      ],
    ],
    not: [ANIMAL],
  },
  {
    all: [
      [
        String.raw`${BITER} (?:\w+ ){0,5}${STRUCK} (?:\w+ ){0,4}(?:me|him|us|${MY_BODY})`,
        String.raw`(?:nasty|bad|big|mild|slight|proper|massive|real) (?:shock|zap|jolt)s? (?:off|from|by|when|through|out of)`,
        'thrown back when i (?:reached|touched|put)',
      ],
    ],
    not: [ASKED, 'coral (?:\\w+ )?got'],
  },
  {
    all: [
      [
        String.raw`${HEAVY} (?:\w+ ){0,3}(?:fell|dropped|rolled|landed|came down|tipped|slid|crashed|collapsed) (?:\w+ ){0,2}(?:on|onto|over) (?:me|him|us|${MY_BODY})`,
        String.raw`dropped (?:a |an |the |my |some )?(?:\w+ ){0,4}on (?:${MY_BODY})`,
        String.raw`(?:slipped|fell|tripped|stumbled|banged|smacked) .{0,60}(?:hit|hurt|banged|broke|twisted|bruised|landed on) (?:${MY_BODY})`,
        String.raw`(?:slipped|went|slid|drove|cut|sliced) (?:\w+ ){0,6}into (?:${MY_BODY})`,
      ],
    ],
    not: [ASKED],
  },
  {
    all: [
      [
        String.raw`stepped on (?:\w+ ){0,4}(?:glass|shards?|urchin|blade|hook)`,
        'needs? stitches',
        'blood everywhere',
        String.raw`singed (?:${MY_BODY})`,
        String.raw`superglued (?:${MY_BODY})`,
        String.raw`(?:boiling|scalding) (?:\w+ ){0,4}(?:${ON_BODY})`,
      ],
    ],
    not: [ASKED],
  },
  {
    all: [
      [CAUSTIC, 'solution', 'additive', 'bottle'],
      [String.raw`${ON_BODY}`, 'chugged', 'downed', 'guzzled'],
      [
        'dripp\\w*',
        'splash\\w*',
        'spill\\w*',
        'spilt',
        'flick\\w*',
        'squirt\\w*',
        'all over',
        'burn\\w*',
        'sting\\w*',
        'white',
        'chugged',
        'downed',
        'guzzled',
      ],
    ],
    not: [`^(?:so |hey |hi |but |and )*${ASKED}`],
  },
  {
    all: [
      [ZOA],
      [
        String.raw`(?:my|his|her) (?:\w+ )?(?:eye(?:s|lids?|balls?)?|mouth|lips?)`,
        'open (?:wound|cut|sore)',
        String.raw`into (?:${MY_BODY})`,
      ],
    ],
    not: [ASKED, 'keep', 'caught my eye', 'eyes on'],
  },
  {
    all: [
      [
        String.raw`(?:bristle|hair|fuzz|spine|quill|needle|tentacle)s? (?:\w+ ){0,3}(?:stuck|embedded|broke(?:n)? off|wrapped) (?:\w+ ){0,2}(?:in|into|round|around|on) (?:${MY_BODY})`,
        'swollen (?:tongue|lips?|throat|face)',
        String.raw`(?:he|she|dad|mum|mom|wife|husband|son|daughter|friend|mate|partner)(?:'s| is| was|s)? (?:not|n'?t) (?:respond\w*|answer\w*|mov\w*|wak\w*)`,
        'eyes? (?:is|are|keeps?) (?:\\w+ )?(?:burning|stinging)',
        String.raw`(?:wound|sore|cut|scratch|sting|bite) (?:\w+ ){0,12}(?:purple|black|hot|swollen|weeping)`,
      ],
    ],
    not: [String.raw`${ANIMAL}s?'?s? (?:\w+ )?(?:has|have|with|got|had|eyes?)`, ASKED],
  },
  {
    all: [
      [PET],
      [CAUSTIC],
      [
        'walked',
        'stepped',
        'rolled',
        'fell',
        'knocked',
        'paws?',
        'licking',
        'got (?:in|into|on|some)',
        'covered',
      ],
    ],
    not: [ASKED, 'can', 'safe', 'keep', 'dog ?face', 'cat ?fish', 'prevent\\w*', 'how'],
  },
  {
    all: [
      [PET],
      ['fell over', 'collapsed', 'not moving', 'breathing (?:hard|fast|funny)'],
      ['tank', 'sump', 'sprayed', 'epoxy', 'paint', 'fumes', 'aquarium', 'reef', 'salt'],
    ],
    not: ['dog ?face', 'cat ?fish'],
  },
  {
    all: [
      [
        String.raw`(?:picked up|grabbed|touched|handled) (?:a |the |my )?(?:bristle ?worm|fire ?worm|stone ?fish|lion ?fish|fire coral)`,
      ],
    ],
    not: [ASKED, 'gloves', 'tongs', 'with a', 'can', 'should', 'if'],
  },
];
