import type { Way } from '../../said.ts';

/** No mains. */
export const powerCut: readonly Way[] = [
  {
    all: [
      [
        String.raw`(?:black ?out|power (?:cut|outage|failure)) (?:in (?:the |my |our )?(?:whole |entire )?(?:street|town|city|area|house|building|village|neighbou?rhood)|here|since|now|right now|tonight|today|started|for \d+ hours?)`,
        String.raw`(?:power|electricity)(?:'?s)? (?:is |went |has been |been )?(?:out|off|gone|down) (?:here|since|now|right now|for (?:\d+|hours)|in (?:the |my |our )?(?:whole |entire )?(?:street|town|city|area|house|building))`,
        String.raw`no (?:power|electricity) (?:since|for \d+|now|here|at (?:all|home))`,
      ],
    ],
    not: [
      '(?:dinos?|cyano\\w*|algae|lights?|coral\\w*|day) black ?out',
      'plan(?:ning)?',
      'prepar\\w*',
      'in case',
      '(?:dinos?|cyano\\w*|algae)',
    ],
  },
  {
    all: [
      [
        'power (?:cut|outage|failure)s?',
        "power(?:'?s| is| was| has been| been| went| has gone)? (?:out|gone|down|still out)",
        'power (?:has |just |suddenly )*(?:went|gone|failed)',
        'power is off',
        'outages?',
        'no (?:power|electricity|electrics?(?! shock)|juice)',
        'lights? (?:are |went |is )?(?:off|out) (?:in |across )?(?:the |my |our )?(?:whole|entire|all)',
        "(?:power|electricity|electric|grid|mains)(?:'?s| is| was| has| went| just| still)* (?:been )?(?:out|off|gone|down|cut|dead)",
        '(?:storm|hurricane|wind|lightning|ice) (?:\\w+ )?(?:killed|took|knocked|cut) (?:out )?(?:\\w+ )?(?:power|electric\\w*)',
        '(?:breaker|gfci|rcd|fuse|ground[- ]fault)(?: switch)? (?:has |keeps? |just |was |is |must have )*(?:tripp\\w*|blew|blown|popped|off)',
        '(?:shut|cut|turn(?:ed|ing)?) (?:us|our|my|the) (?:power |electric\\w* )?off',
        'power (?:is )?back (?:on )?(?:tomorrow|tonight|in \\d+)',
        '(?:lost|losing) (?:power|electricity)',
        'without (?:power|electricity)',
        '(?:took|knocked) (?:(?:the|our|my|all) )?power out',
        '(?:took|knocked) out (?:(?:the|our|my|all) )?power',
        'electricity (?:is |went |has been )?(?:out|off|gone|down)',
        'black ?out',
        'brown ?out',
      ],
    ],
    not: [
      '(?:how long|what) (?:can|would|will|if|happens)',
      'prepar\\w*',
      'plan(?:ning)?',
      'recommend\\w*',
      'backups?(?! (?:is|was|has|died|dead|failed|empty))',
      'in case',
      'before (?:a|the|any|an)',
      '(?:dinos?|cyano\\w*|algae|lights?|coral\\w*|day) black ?out',
      'black ?out (?:for|against|the|period|method)',
      'black ?out.{0,20}(?:dinos?|cyano|algae)',
      '(?:dinos?|cyano\\w*|algae).{0,30}black ?out',
      '(?:coral|acro|monti|it|sps)\\w* (?:\\w+ )?brown(?:ed)? ?out',
    ],
  },
];
