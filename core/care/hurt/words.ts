/** Words several hurts are said with: patterns of a cleaned text, joined by `|`. */

export const EYE = String.raw`(?:eye(?:s|balls?|lids?)?)`;
export const ZOA = String.raw`(?:zoas?|zoo?[ae]nth\w*|palys?|palyth?oas?|palythoa|button polyps?|palytoxin)`;
/** What lives on rock and is put into the air by heat, brush or spray. */
export const ROCK = String.raw`(?:${ZOA}|(?:live |reef |dry |liverock|old )*rocks?|live ?rock|frag(?:s|ged|ging)?(?: plugs?)?|corals?|polyps?|slime|dinos?|dinoflagellates)`;
/** What does that. */
export const WORKED = String.raw`(?:boil\w*|steam\w*|microwav\w*|bak(?:ed|ing)|scrub\w*|scrap(?:ed|ing)|pressure ?wash\w*|saw(?:ed|ing|n)|drill\w*|frag(?:ged|ging)|cut(?:ting)?|handl\w*|clean\w*|mov(?:ed|ing)|brush\w*|glu(?:ed|ing)|grind\w*|chisel\w*|chipp\w*|came|touch\w*|peel\w*|dry(?:ing)?)`;
export const ILLNESS = String.raw`(?:fever\w*|cough\w*|flu|metal(?:lic)?|bitter|taste\w*|chills?|shiver\w*|shak(?:y|ing|es)|weak\w*|cramps?|numb\w*|tingl\w*|dizz\w*|faint\w*|breath\w*|chest|wheez\w*|vomit\w*|throwing up|puk\w*|nause\w*|headaches?|awful|terrible|horrible|ill|sick|unwell|rough|heart|muscles?|sweat\w*|poison\w*|throat|ach(?:e|es|ing)|lungs?|slurr\w*|talk|(?:can'?t|cannot) feel)`;

export const SOLVENT = String.raw`(?:bleach|chlorine|muriatic|hydrochloric|acid|vinegar|ammonia|ozone|formalin|chemicals?|cleaners?|paint|epoxy|spray|solvent)`;
/** Liquids and powders of the fish room that burn. */
export const CAUSTIC = String.raw`(?:(?:muriatic |hydrochloric |strong |citric )?acid|muriatic|caustic(?: soda)?|lye|sodium hydroxide|hydroxide|bleach|chlorine|peroxide|h2o2|kalk\w*|lime(?:water)?|lime water|calcium (?:chloride|hydroxide|oxide)|soda ash|(?:sodium )?carbonate|ammonia|formalin|reagents?|two[- ]part|(?:alk\w*|calcium|dosing|magnesium|test) (?:solution|liquid|powder|stuff)|drain cleaner|iodine|vinegar)`;
export const SKIN = String.raw`(?:hands?|fingers?|fingertips?|thumbs?|wrists?|palms?|arms?|forearms?|elbows?|skin|face|feet|foot|toes?|legs?|knees?|ankles?|neck|chest|shins?|thighs?|cal(?:f|ves)|cheeks?|belly|lap|lips?|mouth)`;

export const PET = String.raw`(?:dogs?|doggo|puppy|puppies|pup|cats?|kitty|kittens?|parrots?|birds?|budgie|cockatiel|ferret|bunny|hamster|guinea pig|pug|labrador|beagle|husky|poodle|terrier|(?:golden )?retriever|german shepherd|bulldog|chihuahua|dachshund|spaniel)`;
export const STUNG = String.raw`(?:stung|stings?|stinging|sting|burn\w*|rash|welts?|itch\w*|blister\w*|swollen|swell\w*|numb\w*|hives|hurts?|pain\w*|red|brush\w*|touch\w*|scrap\w*|scratch\w*|cut|scream\w*|cry\w*)`;
export const ANEMONE_OR_CORAL = String.raw`(?:anemones?|nems?|r?bta|bubble ?tips?|carpet|aiptasia|majano|condy\w*|corals?|torch\w*|hammers?|frogspawn|galaxea|elegance|euphyllia|acros?|acropora|monti\w*|chalices?|acans?|favia\w*|goni\w*|scoly\w*|gsp|leather)`;
