/** What can hurt, by words of warning: GHS hazard classes (UN GHS rev. 9, tables from memory) and those of a wet room. */
const WORDS: Readonly<Record<string, RegExp>> = {
  caustic: /\bcaustic\b/i,
  'eye damage':
    /\b(?:eye protection|goggles|eye damage|eye irritation|in the eye|sting eyes|into the eyes?)\b/i,
  'skin burns': /\b(?:burns? (?:skin|and)|skin burns?)\b/i,
  'heat of dissolving': /\bgets? (?:very )?hot\b/i,
  'poison gas': /\b(?:gas is poisonous|poison(?:ous)? gas|fumes kill)\b/i,
  oxidiser: /\boxidiser\b/i,
  palytoxin: /\bpalytoxin\b/i,
  'electric shock': /\b(?:electric shock|RCD|breaker|unplug|mains)\b/i,
  venom: /\b(?:venom|spines?|sting(?:s|ing) (?:people|skin))\b/i,
  medicine: /\b(?:a medicine into|medicate|antibiotics?|copper)\b/i,
};

/** The hazards a text warns of. */
export function hazardsOf(text: string): ReadonlySet<string> {
  return new Set(Object.entries(WORDS).flatMap(([hazard, words]) => (words.test(text) ? [hazard] : [])));
}
