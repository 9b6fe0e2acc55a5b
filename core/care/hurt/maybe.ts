const OWN = String.raw`(?:my|his|her|their|our|your|(?:the|my) (?:kid|boy|girl|baby|son|daughter|wife|husband)'?s?) (?:left |right |whole |little )?`;
/** Parts only a person has, or that are said to be a person's. */
const PARTS = String.raw`(?:fingers?|finger ?tips?|thumbs?|knuckles?|wrists?|forearms?|elbows?|ankles?|shins?|knees?|heels?|toes?|${OWN}(?:hands?|arms?|palms?|skin|face|head|neck|chest|throat|lips?|mouth|tongue|eyes?|eyelids?|legs?|foot|feet|back|heart|stomach|belly|lungs?))`;
/** What people feel, suffer and do about it. */
const SUFFERED = String.raw`(?:blood|bleed(?:s|ing)?|blisters?|blistering|scald\w*|burn(?:t|ed) (?:me|him|her|us)|stung (?:me|him|her|us)|bit (?:me|him|her|us)|bites me|(?:got|stuck|stabbed|hit) me|faint(?:ed|ing)?|unconscious|passed out|ca ?n'?t let go|threw up|throwing up|vomit\w*|fever|dizzy|chills|numb|tingl\w*|buzz(?:ed|ing)?|wheez\w*|cough(?:s|ing)?|eyes streaming|ambulance|hospital|doctor|medic|antihistamine)`;
const MAYBE = new RegExp(String.raw`(?<![a-z0-9])(?:${PARTS}|${SUFFERED})(?![a-z0-9])`);

/**
 * Whether a cleaned text that nothing else could be made of may tell of somebody hurt. Deliberately wide: a question too
 * many costs a tap, an emergency that is answered with "I did not find a question" may cost more.
 */
export function mayBeHurt(text: string): boolean {
  return MAYBE.test(text);
}
