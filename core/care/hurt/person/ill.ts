import type { Way } from '../../said.ts';
import { ANIMAL, FELT, HANDLED, ILL, PERSON, SURE_PERSON } from '../person-parts.ts';

/** Ill after rock, zoanthids or slime, or simply down. */
export const ill: readonly Way[] = [
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
