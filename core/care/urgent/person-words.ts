import { saidIn, type Way } from '../said.ts';
import {
  ANIMAL,
  BODY,
  CAUSTIC,
  FELT,
  HANDLED,
  MY_BODY,
  ON_BODY,
  PERSON,
  PET,
  SURE_PERSON,
  VENOMOUS,
} from './person-parts.ts';

/** A question about what might be, not a tale of what was. */
const ASKED = String.raw`(?:can|could|will|would|do|does|is|are) (?:a |an |the |my |it |they |that |those )?(?:\w+ ){1,3}(?:sting|stings|bite|bites|hurt|hurts|dangerous|venomous|poisonous|toxic|safe|burn|bad for)`;
const ILL = String.raw`(?:sick|ill|weak|unwell|poisoned|vomit\w*|throwing up|threw up|cough\w*|shak(?:y|ing)|numb\w*|tingl\w*|ach(?:e|es|ing)|in pain)`;
const DRINKS = String.raw`(?:drank|drunk) (?:a |an |my |some |too much |the )?(?:\w+ )?(?:beers?|coffee|tea|wine|whisky|soda|milk|juice)`;

/** Mains through a body. */
// prettier-ignore
const shock: readonly Way[] = [
  { all: [['electrocuted', '(?:electric|electrical) shock']], not: ['(?:avoid|prevent|risk of|hazard of)'] },
  { all: [[String.raw`(?:feel|felt|feeling|get|got|getting|gave me|gives me|gets me) (?:an? )?(?:little |small |mild |big |electric )?(?:tingl\w*|zaps?|shocks?|buzz|jolts?)`]] },
  { all: [[String.raw`(?:feel|felt|feeling) (?:\w+ )?(?:electricity|current|voltage)`]], not: ['from the (?:pump|wavemaker|powerhead)'] },
  { all: [[String.raw`(?:got|get|gets|getting|been|was|were|am|being|just) (?:shocked|zapped)`]], not: [String.raw`${ANIMAL}s? (?:\w+ ){0,2}(?:shocked|zapped)`, 'shocked (?:how|that|when|to (?:see|hear|find))', 'shocked (?:by|at|to see) (?:the |how |that )?(?:price|cost|bill|growth|color|colour|size|much|how)'] },
  { all: [[String.raw`(?:shocks|shocked|zaps|zapped|shocking|zapping) (?:me|us|him|my (?!${ANIMAL}|coral|tank|reef)\w+)`]] },
  { all: [['tingl\\w*', 'prickl\\w*'], [MY_BODY, 'water', 'tank', 'i']], not: ['lights?'] },
];

/** Eyes, skin, wounds, stings and bites. */
// prettier-ignore
const wound: readonly Way[] = [
  { all: [[String.raw`(?:in|into|got in) (?:my|his|her|their|the) (?:\w+ )?(?:eye(?:s|balls?)?|mouth|face)`]] },
  { all: [[String.raw`(?:my|our|wife'?s|son'?s|daughter'?s|husband'?s|kid'?s) (?:left |right |both )?eyes?`], ['burn\\w*', 'sting\\w*', 'stung', 'red', 'swollen', 'swell\\w*', 'pain\\w*', 'hurt\\w*', 'sore', 'itch\\w*', 'squirt\\w*', 'splash\\w*', 'blurr\\w*']], not: ['(?:bad|harmful|dangerous|safe|hard) (?:for|on) (?:my|your) eyes?', '(?:does|will|can|do) (?:\\w+ ){1,3}(?:hurt|burn)'] },
  { all: [[MY_BODY], [String.raw`numb\w*|swoll?en|swell\w*|puffy|red and|turn(?:ed|ing) (?:red|black|purple|white|blue)|rash|hives|infect\w*|bleed\w*|blister\w*|itch\w*|lump|pus|burn(?:s|ed|t|ing)?|paraly[sz]ed|hurts?|hurting|pain\w*|throbbing|stabb\w*|pok(?:ed|es)|prick\w*|pierced|spines?|sliced|gash|red line|splash\w*|spill\w*|dripp\w*|dust|squirt\w*`]], not: [String.raw`${ASKED}`, 'sun ?burn', 'keep (?:\\w+ ){1,2}from', 'burn(?:ed|t)? (?:out|my (?:dinner|food))', 'will (?:it|that|this|they) (?:hurt|burn)'] },
  { all: [[String.raw`^(?:help )?(?:the )?${BODY} (?:is|are|feels?|got|went|looks?) (?:\w+ )?(?:numb|swollen|red|burning|bleeding|infected|tingling)`]] },
  { all: [[`glued (?:${MY_BODY})`, 'skin (?:ripped|torn|tore|peeled|came) off'], ['glue\\w*', 'skin']], not: [ANIMAL] },
  { all: [[String.raw`(?:rash|lump|bump|sores?|blisters?|hives|burns?|cuts?|stings?|bites?|spines?|splinters?) ${ON_BODY}`]], not: [ASKED, '(?:what|which|best) gloves'] },
  { all: [[String.raw`(?:cut|sliced|stabbed|burned|burnt|hurt|injured|punctured) (?:myself|himself|herself|me|${MY_BODY})`]] },
  { all: [[String.raw`(?:(?:infected|swollen|numb|burning|bleeding) ${BODY}|${BODY} (?:\w+ )?(?:infected|infection))`], [PERSON, 'tank', 'aquarium', 'fish', 'coral', 'rock']], not: [String.raw`${ANIMAL}s?'?s? (?:\w+ ){0,3}(?:infected|swollen|burning|bleeding)`, String.raw`${ANIMAL} (?:with|has) (?:a |an )?`] },
  { all: [[String.raw`${CAUSTIC} (?:\w+ )?(?:in|on) (?:\w+ )?${BODY}`]], not: [ASKED, 'never', 'avoid'] },
  { all: [[String.raw`(?:bleeding|infected|numb)`], [PERSON]], not: [String.raw`${ANIMAL}s? (?:\w+ ){0,2}(?:bleeding|infected|numb)`, 'bleeding (?:the |air|out)', '(?:infected|infest\\w*) (?:with|by|coral|fish|tank)'] },
  { all: [[CAUSTIC], [String.raw`(?:splash\w*|spill\w*|spilt|got|get|burn\w*|dripp\w*|squirt\w*|dust|powder|sprayed) (?:\w+ ){0,4}${ON_BODY}|burn\w* (?:${MY_BODY}|me|him)|(?:my|his|her) skin`]], not: [ASKED, 'glue(?:d)? on'] },
  { all: [[String.raw`${PERSON} (?:just |got |gets |was |were |have been |been |got badly )*(?:stung|bitten|stabbed|poked|pricked)`, String.raw`^(?:help[ ,!]*|just |got |been |i )*(?:bit|bitten|stung|stabbed|poked|pricked) (?:by|on|in) (?:an?|the|my)`, String.raw`(?:stung|bit|stabbed|poked|pricked|spined) (?:me|us|him|my (?:wife|husband|son|daughter|kid|child|friend|girlfriend|boyfriend|toddler)|by a (?:lion|stone|scorpion)\w*)`]], not: [String.raw`(?:clown\w*|damsels?|fish|blenny|tang) (?:\w+ )?bit me`] },
  { all: [[String.raw`${VENOMOUS} (?:\w+ )?(?:bit|stung|stabbed|poked|pricked|got) (?:me|him|us|${MY_BODY}|my \w+'?s? ${BODY})`]] },
  { all: [[String.raw`(?:lion ?fish|scorpion ?fish|stone ?fish|sting ?ray|cone snail|jelly ?fish|(?:sea )?urchin|bristle ?worm|fire ?worm|rabbit ?fish|fox ?face|octopus) (?:sting|stung|spines?|bite|poke|quills?)s?`]], not: [ASKED, '(?:what|which|how|when|if|avoid|prevent|shed\\w*|los\\w*|dropp\\w*|fall\\w*)', 'my (?:urchin|lion ?fish|fox ?face|rabbit ?fish|stone ?fish)'] },
  { all: [['(?:stepped|fell|sat) on (?:a |an |the |my )?(?:sea )?(?:urchin|stone ?fish|sting ?ray|lion ?fish|fire coral)']] },
];

/** Swallowed or breathed in, by people or pets. */
// prettier-ignore
const poisoned: readonly Way[] = [
  { all: [['drank', '(?:have|has|had|was|got) drunk', 'drinking (?:the |from the |out of the )(?:tank|sump|lime|kalk)\\w*']], not: [DRINKS] },
  { all: [['swallow(?:ed|s)?', 'ingested', 'mouthful of']], not: [String.raw`${ANIMAL}s? (?:has |have |just |had |is |got )?(?:\w+ )?(?:swallow(?:ed|s)?|ingested|a mouthful)`] },
  { all: [[String.raw`${SURE_PERSON} (?:just |has |have |had )?(?:ate|eaten|chewed|licked|bit into)`], [CAUSTIC, 'corals?', 'frags?', 'zoas?', 'palys?', 'zoanthids?', 'powder', 'salt(?: mix)?(?! water)', 'reef salt', 'test kit', 'supplement', 'medicine', 'medication', 'carbon', 'media', 'resin', 'snails?', 'shells?', 'rocks?']], not: [String.raw`my ${ANIMAL}s? (?:just |has )?ate`] },
  { all: [[PET], ['ate', 'eaten', 'licked', 'licking', 'drank', 'chewed', 'chewing', 'swallowed', 'vomit\\w*', 'throwing up', 'drool\\w*', 'foaming', 'bit(?:ing|ten)?', 'limp', 'stagger\\w*', 'collapsed', 'seizures?', 'shak(?:ing|es)', 'shocked', 'poison\\w*']], not: [String.raw`${PET} (?:\w+ )?(?:ate|swallowed|licked) (?:a |my |the |our )?(?:\w+ )?(?:clown\w*|fish(?: food)?|tang|goby|shrimp)`, 'dog ?face', 'cat ?fish', 'rabbit ?fish'] },
  { all: [['inhaled', 'breathed in', 'carbon monoxide', 'co alarm']], not: ['(?:avoid|not) (?:inhal\\w*|breath\\w*)', '(?:which|best|buy|get|need) (?:an? )?(?:carbon monoxide|co)'] },
  { all: [['mix(?:ed|ing)', 'poured', 'added'], ['bleach'], ['vinegar', 'acid', 'muriatic', 'citric', 'ammonia']], not: ['(?:can|could|should|may) i', 'is it (?:ok|okay|safe)', 'never', 'how'] },
  { all: [['fumes', 'smoke', 'gas', 'generator', 'grill', 'charcoal', 'camping stove'], [FELT, ILL, String.raw`(?:feel|feeling) (?:\w+ )?(?:sick|ill|unwell|sleepy)`, 'smells? (?:awful|sharp|terrible)']] },
  { all: [['generator', 'grill', 'charcoal', 'camping stove'], ['(?:run|runs|running|started|on|going|burning|is|it) (?:\\w+ )?(?:inside|indoors|in (?:the|my|our) (?:house|garage|basement|kitchen|living room|room|apartment|flat|hallway))']] },
];

/** Ill after rock, zoanthids or slime, or simply down. */
// prettier-ignore
const ill: readonly Way[] = [
  { all: [['(?:metallic|bitter|metal) taste', 'tast(?:e|es|ed|ing) (?:of |like )?(?:metal(?:lic)?|penn(?:y|ies)|coins?|copper|blood)', 'palytoxin poison\\w*', 'palytoxin (?:is )?making (?:me|us)']] },
  { all: [["(?:cannot|can'?t|can not|could ?n'?t|couldn'?t|struggling to|hard to) breathe"]], not: [String.raw`${ANIMAL}s? (?:\w+ ){0,2}(?:cannot|can'?t|can not|struggling to|hard to) breathe`] },
  { all: [[FELT], [HANDLED]], not: [String.raw`${ANIMAL}s? (?:\w+ ){0,3}(?:trouble|difficulty|hard|cough\w*|red|swollen|cloudy|rash|sweating)`, String.raw`\w+'s eyes?`] },
  { all: [[String.raw`${PERSON} (?:is |are |am |was |were |feels? |feeling |felt |got |get |gets |getting |became |been |have been |has been |have |has |started |all |really |so |very |both |pretty |suddenly |now |just |a )*${ILL}(?! of| frags?| corals?| tank| fish)`], [HANDLED]], not: [String.raw`${ANIMAL}s? (?:\w+ ){0,2}(?:sick|ill|weak|cough\w*|shak\w*)`] },
  { all: [['numb']] },
  { all: [[String.raw`${PERSON} (?:is |was |has |just |suddenly |have )*(?:collapsed|passed out|fainted|unconscious|unresponsive|not breathing|seizing)`, String.raw`(?:he|she|wife|husband|son|daughter|kid|dad|mom|mum|friend|partner) (?:isn'?t|is not|stopped) breathing`, String.raw`(?:wife|husband|son|daughter|kid|dad|mom|mum|friend|partner) is (?:lying )?on the (?:floor|ground)`]], not: [String.raw`${ANIMAL}s?.{0,40}(?:he|she) `] },
  { all: [[String.raw`(?:tank|stand|glass|aquarium|light|lamp|rock) (?:has |just )?(?:fell|broke|burst|collapsed|shattered|exploded|tipped over|landed) on (?:me|us|him|(?:my |our )?(?:\w+ )?(?:kid|son|daughter|wife|husband|child|toddler|baby|foot|hand|leg|head)s?)`]] },
];

/**
 * Whether a cleaned text speaks of a person or a pet that is hurt or ill: rather once too often. Animals of the tank that
 * swallow something, corals that get a shock of light and questions about what might hurt are left out.
 */
export const isPersonHurt = saidIn([...shock, ...wound, ...poisoned, ...ill]);
