/** Words for a coral in a member's sentence, patterns of whole words. */
export const CORAL = [
  'corals?', 'acros?', 'acrop\\w*', 'sps', 'lps', 'softies', 'sticks?', 'frags?', 'colon(?:y|ies)', 'montis?', 'mont[aei]p\\w*', 'birds?nests?', 'stylo\\w*', 'torch(?:es)?',
  'hammers?', 'frogspawns?', 'e?u(?:ph|f)[iy]l\\w*', 'acans?', 'zoas?', 'zoo?[ae]nth\\w*', 'palys?', 'leathers?', 'toadstools?', 'goni\\w*', 'alveopora\\w*', 'duncans?', 'brains?', 'favias?', 'chalices?',
  'blastos?', 'mushrooms?', 'shrooms?', 'plates?', 'scol(?:y|ies)', 'trachy\\w*', 'bubble coral', 'candy ?canes?', 'caulastrea', 'cyphastrea', 'lepto\\w*', 'pavona', 'seriatopora', 'pocillopora', 'pocci', 'porites', 'millepora', 'milli(?:es|s)?', 'lobo\\w*', 'symphyllia', 'favites', 'clove polyps', 'kenya tree', 'anthelia', 'ricordea', 'yumas?', 'rhodactis', 'discosoma', 'sun coral', 'clams?', 'galaxea', 'elegance', 'gorgonians?', 'xenia', 'gsp', 'star polyps', 'polyps?', 'heads?',
] as const; // prettier-ignore

export const FISH = [
  'fish(?:es)?', 'clown(?:s|fish)?', 'tangs?', 'goby', 'gobies', 'blenn(?:y|ies)', 'wrasses?', 'damsels?', 'cardinals?', 'anthias', 'angel(?:s|fish)?', 'chromis', 'foxface', 'royal gramma', 'gramma', 'dotty ?back', 'puffers?', 'eels?', 'lion ?fish', 'mandarins?', 'hawk ?fish', 'triggers?', 'rabbit ?fish', 'groupers?', 'basslets?', 'butterfl(?:y|ies)(?: ?fish)?', 'file ?fish', 'jaw ?fish', 'fire ?fish', 'sea ?horses?', 'pipe ?fish', 'hippo',
] as const; // prettier-ignore

/** What algae and slime grow over. */
export const CARPET = [
  'sand', 'rocks?', 'glass', 'tank', 'algae', 'corals?', 'bottom', 'everywhere', 'sheets?', 'zoas?', 'overflow',
] as const; // prettier-ignore
