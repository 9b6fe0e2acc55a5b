import type { Way } from '../../said.ts';
import type { UrgentId } from '../cards.ts';

/** Fire, water near mains, and no power. */
// prettier-ignore
export const mainsWays = {
  'fire or sparks': [
    { all: [['spark(?:s|ed|ing)?', 'smok(?:e|es|ing)', 'burn(?:ing|t) (?:smell|plastic|rubber)', 'smell(?:s|ing)? (?:of |like |something )?(?:burn\\w*|smoke)', '(?:on|caught|catching|a) fire', 'in flames', 'scorch\\w*', 'arcing', 'melted', 'burning hot'], ['plugs?', 'outlets?', 'sockets?', 'power (?:strip|bar|brick|supply)', 'cables?', 'cords?', 'wires?', 'stand', 'cabinet', 'tank', 'sump', 'pump', 'heater', 'lights?', 'lamp', 'fixture', 'adapter', 'transformer', 'ballast', 'chiller', 'controller']], not: ['fire (?:fish|shrimp|coral|worm)', 'smoke (?:alarm|detector) (?:for|near)', 'tank (?:\\w+ )?smokes?', 'spark (?:joy|interest)', 'i (?:\\w+ )?smoke', 'smoking (?:in|near|around)', 'get rid of', 'cooking', 'bad for', 'smok\\w* (?:near|around|in) (?:the|my) (?:tank|room)', 'acros?|corals?'] },
    { all: [['something is burning', 'fire (?:in|under|behind|near) (?:the|my) (?:tank|stand|sump|cabinet)', 'caught fire']] },
  ],
  flood: [
    { all: [['flood(?:ed|ing)?'], ['floor', 'room', 'house', 'carpet', 'kitchen', 'basement', 'living room', 'downstairs', 'everywhere', 'sump', 'tank', 'socket', 'plugs?']], not: ['flood ?lights?', 'flooded (?:my |the )?(?:display|tank|sump) with'] },
    { all: [['water'], ['(?:all over|on) (?:the |my |our )?(?:floor|carpet|wall sockets?|sockets?|plugs?|power strip|cables?)', 'everywhere(?! is| in)', 'ceiling']], not: ['(?:algae|cyano\\w*|flow|moves?|move) everywhere'] },
    { all: [[String.raw`(?:sump|tank|skimmer|overflow|return|aquarium|bucket) (?:is |has |just |keeps |was |box |started )*(?:over ?flow(?:ed|s|ing)?|spill(?:ed|ing|s)?|running over)`]], not: ['overflow(?:ed|s)? (?:the |its |into (?:the |a |its ))?(?:\\w+ )?(?:cup|bucket|container|collection)', 'cup', 'how (?:do|can|to)', 'what if', 'without'] },
    { all: [['water'], ['(?:pouring|spilling|gushing|running|leaking|coming|dripping) (?:out|over|down|onto|through|from (?:the|my|under) (?:\\w+ )?(?:tank|stand|sump|cabinet|overflow))']], not: ['pipe|return|nozzle|spout|tap|ro ?di|filter|slowly'] },
    { all: [['leak', 'leaks', 'leaking', 'crack', 'puddle'], ['sprung a leak', String.raw`(?:in|from|under|on) (?:my |the |our )?(?:\w+ )?(?:tank|sump|aquarium|glass|stand)`]], not: ['(?:how|what) (?:do|can|to|if)', 'salt creep', 'crack in the stand', 'test\\w*'] },
    { all: [[String.raw`(?:light|lamp|fixture|hair ?dryer|cable|plug|fan|extension cord|power strip|phone charger) (?:just |has )?(?:fell|dropped|slipped|is) (?:in|into)(?: the| my)? (?:tank|water|sump)`, '(?:cord|cable|wire)s? (?:is |are )?(?:\\w+ )?(?:frayed|bare|exposed|cut|chewed)']] },
    { all: [[String.raw`(?:tank|sump|seam|glass|silicone|aquarium)(?: (?:is|has|just|started|seam))* (?:(?:sprung|got|has) a leak|leak(?:ing|ed|s)?|crack(?:ed|ing)?|burst|split|broke|shattered|exploded)`]], not: ['heater', 'thermometer', 'test tube', 'vial', 'cuvette'] },
    { all: [['wet', 'dripping', 'water', 'soaked'], ['power strip', 'extension (?:lead|cord)', 'sockets?', 'breaker', 'outlet']], not: ['wet skim\\w*', '(?:what|which|best|buy|need|safe|mount|place|where|how)'] },
  ],
  'power cut': [
    {
      all: [['power (?:cut|outage|failure)s?', "power(?:'?s| is| was| has been| been| went| has gone)? (?:out|gone|down|still out)", 'power (?:has |just |suddenly )*(?:went|gone|failed)', 'power is off', 'outages?', 'no (?:power|electricity|juice)', "(?:power|electricity|electric|grid|mains)(?:'?s| is| was| has| went| just| still)* (?:been )?(?:out|off|gone|down|cut|dead)", '(?:storm|hurricane|wind|lightning|ice) (?:\\w+ )?(?:killed|took|knocked|cut) (?:out )?(?:\\w+ )?(?:power|electric\\w*)', '(?:breaker|gfci|rcd|fuse|ground[- ]fault)(?: switch)? (?:has |keeps? |just |was |is |must have )*(?:tripp\\w*|blew|blown|popped|off)', '(?:shut|cut|turn(?:ed|ing)?) (?:us|our|my|the) (?:power |electric\\w* )?off', 'power (?:is )?back (?:on )?(?:tomorrow|tonight|in \\d+)', '(?:lost|losing) (?:power|electricity)', 'without (?:power|electricity)', '(?:took|knocked) (?:(?:the|our|my|all) )?power out', '(?:took|knocked) out (?:(?:the|our|my|all) )?power', 'electricity (?:is |went |has been )?(?:out|off|gone|down)', 'black ?out', 'brown ?out']],
      not: ['(?:how long|what) (?:can|would|will|if|happens)', 'prepar\\w*', 'plan(?:ning)?', 'recommend\\w*', 'backups?(?! (?:is|was|has|died|dead|failed|empty))', 'in case', 'before (?:a|the|any|an)', '(?:dinos?|cyano\\w*|algae|lights?|coral\\w*|day) black ?out', 'black ?out (?:for|against|the|period|method)', 'black ?out.{0,20}(?:dinos?|cyano|algae)', '(?:dinos?|cyano\\w*|algae).{0,30}black ?out', '(?:coral|acro|monti|it|sps)\\w* (?:\\w+ )?brown(?:ed)? ?out'],
    },
  ],
} as const satisfies Partial<Record<UrgentId, readonly Way[]>>;
