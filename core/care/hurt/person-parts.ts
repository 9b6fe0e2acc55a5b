import { CAUSTIC as BURNS, PET as ANY_PET } from './words.ts';

/** Words the ways in `person` are built from: patterns of a cleaned text, joined by `|`. */

export const FAMILY = String.raw`(?:wife|wifey|husband|hubby|partner|spouse|kids?|sons?|daughter|child|children|toddler|baby|infant|mum|mummy|mom|mommy|mother|dad|daddy|father|step(?:son|daughter|mom|mum|dad|father|mother)|gran|nana?|grandad|granddad|grandpa|grandma|bf|gf|coworker|colleague|buddy|mate|babysitter|landlord|brother|sister|girlfriend|boyfriend|friend|flatmate|roommate|neighbou?r|grand(?:son|daughter|kid|child|mother|father)|(?:mother|father|brother|sister) in law|nephew|niece|cousin|uncle|aunt|guest|boy|girl|family|\d year old)`;

/** Anybody in the house who is no animal of the tank. */
export const PERSON = String.raw`(?:i|i'?m|i'?ve|we|he|she|me|myself|him|us|(?:my|our|the|a|whole) (?:little |big |old |older |elderly |young |younger |youngest |oldest |poor |pregnant )?${FAMILY}|${FAMILY}|someone|somebody|everyone (?:here|at home|in the (?:house|family)))`;
/** The same without those that a fish can be called, too. */
export const SURE_PERSON = String.raw`(?:i|i'?m|i'?ve|we|me|myself|us|${FAMILY}|someone|somebody)`;

export const BODY = String.raw`(?:hands?|fingers?|fingertips?|thumbs?|knuckles?|wrists?|palms?|arms?|forearms?|elbows?|skin|face|mouth|lips?|tongue|throat|nose|eye(?:s|balls?|lids?)?|feet|foot|toes?|legs?|knees?|heels?|ankles?|shoulders?|shins?|thighs?|cal(?:f|ves)|cheeks?|hips?|ribs?|belly|chest|neck|back|head)`;
const SIDE = String.raw`(?:left |right |both |whole |entire |index |middle |ring |bare |own |inner )?`;
/** Parts no animal of a tank has. */
export const LIMB = String.raw`(?:hands?|fingers?|fingertips?|thumbs?|knuckles?|wrists?|arms?|forearms?|elbows?|foot|feet|toes?|legs?|knees?|ankles?|heels?|shins?|thighs?|forefingers?|palms?|knuckles?)`;
/** A part of a person's body: "my left hand". */
export const MY_BODY = String.raw`(?:my|his|her|their|our|(?:my |the )?(?:son|daughter|wife|husband|kid|child|friend|partner)'?s) ${SIDE}${BODY}`;
export const ON_BODY = String.raw`(?:on|in|into|over|up|down|through) (?:${MY_BODY}|(?:the |a )?${SIDE}${BODY}|me|him|us|myself|(?:my|our) (?:\w+ )?${FAMILY})`;

/** Animals of a tank that fall ill, bite or swallow themselves. */
export const ANIMAL = String.raw`(?:fish|clown\w*|anemone|nem|bta|coral|torch|hammer|plate|tang|eel|crab|shrimp|acan|scoly|star|starfish|wrasse|goby|grouper|blenny|damsel|puffer|anthias|angel\w*|chromis|snail|urchin|cucumber|lionfish|seahorse)`;
/** Animals whose sting, bite or spine a doctor wants to know of. */
export const VENOMOUS = String.raw`(?:lion ?fish|scorpion ?fish|stone ?fish|sting ?ray|stingray|rabbit ?fish|fox ?face|weever|toad ?fish|wasp ?fish|sea nettle|(?:sting)?rays?|moray|eel|octopus|cone snail|jelly ?fish|urchin|bristle ?worms?|fire ?worms?|fire coral|hydroids?|anemone|nem|bta|aiptasia|coral|crown of thorns)`;

export const PET = ANY_PET;
export const CAUSTIC = String.raw`(?:${BURNS}|(?:super ?)?glue|epoxy|(?:oven|drain) cleaner)`;

/** What only people tell of themselves. */
export const FELT = String.raw`(?:fever\w*|fainted|passed out|(?:feel|feels|feeling|felt) (?:\w+ )?(?:awful|terrible|horrible|rough|like (?:crap|hell|death))|chills?|shiver\w*|headaches?|nause\w*|dizz\w*|light ?headed|tight chest|chest (?:is |feels |got )?(?:tight\w*|pains?|hurt\w*)|chest|flu|flu like symptoms|throat (?:is )?(?:closing|tight\w*|swell\w*|burn\w*)|blisters?|(?:can'?t|cannot) feel (?:my|his|her)|eyelids? (?:is |are )?(?:swollen|red|sore)|(?:muscles?|joints?) (?:pains?|cramps?|ach\w*|sore|weak\w*|hurt\w*)|(?:short(?:ness)?|out) of breath|(?:trouble|difficulty|hard) (?:to )?breath\w*|breath\w* (?:is |has been |feels |got )?(?:hard|difficult|tight|shallow|painful)|wheez\w*|heart (?:is )?(?:racing|pounding)|palpitations|sweating|(?:weird|strange|odd|funny|bad) taste|rash|hives|sore throat|(?:burning|sore|red|itchy|painful|watery|swollen) eyes?|eyes? (?:are |is |feels? |keeps? )?(?:burn\w*|sore|red|itch\w*|pain\w*|water(?:ing|y)|swollen|swelling))`;
/** What came before it. */
export const HANDLED = String.raw`(?:fragg(?:ed|ing)|frags?|(?:after|from|since|while) (?:i (?:was |did |do )?|we (?:did )?)?(?:doing|did|working (?:on|in)|being in|maint\w*|servic\w*|scap\w*|open(?:ed|ing)|my hands? (?:in|into)) ?(?:the |my |our |a )?(?:tank|aquarium|reef|sump|muriatic|tub|bottle|rock)?|(?:tank|reef|aquarium) (?:work|maintenance|cleaning|service)|muriatic|chemicals?|cut(?:ting)?|scrub(?:bed|bing)?|scrap(?:ed|ing)|steam(?:ed|ing)|microwav\w*|pressure wash\w*|glu(?:ed|ing)|bit(?:ing|ten)?|boil(?:ed|ing)?|handl(?:ed|ing)|touch(?:ed|ing)|mov(?:ed|ing)|clean(?:ed|ing)|brush(?:ed|ing)|zoas?|zoo?[ae]nth\w*|palys?|palythoas?|palytoxin|rocks?|dinos?|dinoflagellates|new corals?|fumes?|bleach|acid|generator|sprayed|dip(?:ped|ping))`;

/** A question about what might be, not a tale of what was. */
export const ASKED = String.raw`(?:^(?:\w+ )?how (?:do i|to|can i|do you|should i) (?:avoid|prevent|not|keep from)|(?:can|could|will|would|do|does|is|are) (?:a |an |the |my |it |they |that |those )?(?:\w+ ){1,3}(?:sting|stings|bite|bites|hurt|hurts|dangerous|venomous|poisonous|toxic|safe|burn|bad for|shock|go through|penetrate|cut through|stab|harm))`;
export const ILL = String.raw`(?:sick|ill|weak|unwell|poisoned|vomit\w*|throwing up|threw up|cough\w*|shak(?:y|ing)|numb\w*|tingl\w*|ach(?:e|es|ing)|in pain)`;
