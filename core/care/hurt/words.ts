/** Words several hurts are said with: patterns of a cleaned text, joined by `|`. */

export const EYE = String.raw`(?:eye(?:s|balls?|lids?)?)`;
export const ZOA = String.raw`(?:zoas?|zoo?[ae]nth\w*|palys?|palyth?oas?|palythoa|button polyps?|palytoxin)`;
/** What lives on rock and is put into the air by heat, brush or spray. */
export const ROCK = String.raw`(?:${ZOA}|(?:live |reef |dry |liverock|old )*rocks?|live ?rock|frag(?:s|ged|ging)?(?: plugs?)?|corals?|polyps?|slime|dinos?|dinoflagellates)`;
/** What does that. */
export const WORKED = String.raw`(?:boil\w*|steam\w*|microwav\w*|bak(?:ed|ing)|scrub\w*|scrap(?:ed|ing)|pressure ?wash\w*|saw(?:ed|ing|n)|drill\w*|frag(?:ged|ging)|cut(?:ting)?|handl\w*|clean\w*|mov(?:ed|ing)|brush\w*|glu(?:ed|ing)|grind\w*|chisel\w*|chipp\w*|came|touch\w*|peel\w*|dry(?:ing)?)`;
export const ILLNESS = String.raw`(?:fever\w*|cough\w*|flu|metal(?:lic)?|bitter|taste\w*|chills?|shiver\w*|shak(?:y|ing|es)|weak\w*|cramps?|numb\w*|tingl\w*|dizz\w*|faint\w*|breath\w*|chest|wheez\w*|vomit\w*|throwing up|puk\w*|nause\w*|headaches?|awful|terrible|horrible|ill|sick|unwell|rough|heart|muscles?|sweat\w*|poison\w*|throat|ach(?:e|es|ing)|lungs?|slurr\w*|talk|(?:can'?t|cannot) feel)`;

/** Oxidisers of cleaning: each gives off poison with acids, ammonia and other cleaners. */
export const OXIDISER = String.raw`(?:bleach(?! ?(?:out|bypass))|chlorine|hypochlorite|peroxide|h2o2|chloramine|pool shock)`;
/** What they must not meet. */
export const SOUR = String.raw`(?:(?<!amino |fatty )(?:\w+ic )?acids?|vinegar|citric|muriatic|descaler|ammonia|(?:toilet|drain|oven|glass|window|bathroom|kitchen|limescale|tile|rust) (?:bowl )?(?:cleaners?|openers?)|rubbing alcohol|acetone)`;
/** Liquids and powders of house, bench and fish room that burn. */
export const CAUSTIC = String.raw`(?:${OXIDISER}|${SOUR}|caustic(?: soda)?|lye|\w*hydroxide|kalk\w*|lime(?:water)?|lime water|(?:calcium|magnesium|ammonium|potassium|strontium) (?:chloride|hydroxide|oxide|sul[fp]h?ate|nitrate)|cacl2|mgcl2|naoh|(?:soda|washing) ash|washing soda|(?:sodium )?carbonate|percarbonate|permanganate|formalin|formaldehyde|formol|glutaraldehyde|malachite(?: green)?|methylene blue|acriflavine|gentian violet|copper|lugol'?s?|iod(?:ine|ide)|povidone|reagents?|two[- ]part|(?:alk\w*|calcium|dosing|magnesium|test) (?:solution|liquid|fluid|powder|stuff)|toluene|xylene|turpentine|white spirit|methylated spirits?|thinners?|(?:paint|glue) (?:thinner|stripper|remover)|isopropyl|methanol|petrol|gasoline|kerosene|solvents?|degreaser|pvc (?:primer|cement|glue)|disinfectant|sanitisers?|sanitizers?|dechlorinator)`;
/** What makes the air of a room bad. */
export const SOLVENT = String.raw`(?:${OXIDISER}|${SOUR}|ozone|formalin|formaldehyde|toluene|xylene|turpentine|thinners?|petrol|gasoline|chemicals?|cleaners?|paint|epoxy|spray|solvents?|primer)`;
export const SKIN = String.raw`(?:hands?|fingers?|fingertips?|thumbs?|knuckles?|(?:finger|thumb|toe)nails?|shoulders?|wrists?|palms?|arms?|forearms?|elbows?|skin|face|feet|foot|toes?|legs?|knees?|ankles?|neck|chest|shins?|thighs?|cal(?:f|ves)|cheeks?|belly|lap|lips?|mouth)`;

export const PET = String.raw`(?:dogs?|doggo|puppy|puppies|pup|cats?|kitty|kittens?|parrots?|birds?|budgie|cockatiel|ferret|bunny|hamster|guinea pig|pug|labrador|beagle|husky|poodle|terrier|(?:golden )?retriever|german shepherd|bulldog|chihuahua|dachshund|spaniel|siamese|collie|corgi|rottweiler|rabbit(?! ?fish)|gerbil|chinchilla|hedgehog|cockatoo|canary|gecko|iguana|tortoise)`;
export const STUNG = String.raw`(?:stung|stings?|stinging|sting|burn\w*|rash|welts?|itch\w*|blister\w*|swollen|swell\w*|numb\w*|hives|hurts?|pain\w*|red|brush\w*|touch\w*|scrap\w*|scratch\w*|cut|scream\w*|cry\w*)`;
export const ANEMONE_OR_CORAL = String.raw`(?:anemones?|nems?|r?bta|bubble ?tips?|carpet|aiptasia|majano|condy\w*|corals?|torch\w*|hammers?|frogspawn|galaxea|elegance|euphyllia|acros?|acropora|monti\w*|chalices?|acans?|favia\w*|goni\w*|scoly\w*|gsp|leather)`;
/** A jelly's threads are on a person where a part of one is named; "brown jelly" is a coral's. */
export const JELLY = String.raw`(?:jelly ?fish|(?<!brown )jell(?:y|ies)|sea nettles?|cassiopea|man[- ](?:o'?|of)[- ]?war|portuguese man|siphonophore|box jell\w*)`;
/** What cuts. */
export const TOOL = String.raw`(?:(?:band|tile|frag|hack|jig|circular|wet|coping|bone) ?saw|(?<!i )saw(?= (?:blade|went|slipped|cut|got|caught|bit))|scalpel|razors?(?: ?blades?)?|blades?|knife|chisel|dremel|rotary tool|drill(?: bit)?|cutters?|scissors|bone shears?|shears|snips|scraper|box ?cutter|syringe|(?:hypodermic )?needle|glass|hole ?saw)`;
/** Fish and others that bite, but for those whose bite poisons. */
export const BITES = String.raw`(?:moray|eel|trigger\w*|clown\w*|puffers?|turtle|grouper|sharks?|damsels?|wrasse|angel\w*|parrot ?fish|octo(?:pus)?|cuttlefish|lobster|blenny)`;
/** Zoanthids' liquid, in the ways it gets out. */
export const SQUIRTED = String.raw`(?:juices?|slime\w*|goo|mucus|liquid|squirt\w*|spray\w*|spat|spit|splash\w*|squeez\w*|burst)`;
export const HOT_AIR = String.raw`(?:steam\w*|vapou?rs?|boil\w*|microwav\w*|bak(?:ed|ing))`;
