/** Words for a coral in a member's sentence, patterns of whole words. */
export const CORAL = [
  'corals?', 'acros?', 'acropora\\w*', 'sps', 'lps', 'softies', 'sticks?', 'frags?', 'colon(?:y|ies)', 'montis?', 'montipora\\w*', 'birds?nests?', 'stylo\\w*', 'torch(?:es)?',
  'hammers?', 'frogspawns?', 'euphyllia\\w*', 'acans?', 'zoas?', 'zoanthids?', 'palys?', 'leathers?', 'toadstools?', 'goni\\w*', 'alveopora\\w*', 'duncans?', 'brains?', 'favias?', 'chalices?',
  'blastos?', 'mushrooms?', 'shrooms?', 'plates?', 'scol(?:y|ies)', 'trachy\\w*', 'bubble coral', 'candy ?canes?', 'galaxea', 'elegance', 'gorgonians?', 'xenia', 'gsp', 'star polyps', 'polyps?', 'heads?',
] as const; // prettier-ignore

export const FISH = [
  'fish(?:es)?', 'clown(?:s|fish)?', 'tangs?', 'goby', 'gobies', 'blenn(?:y|ies)', 'wrasses?', 'damsels?', 'cardinals?', 'anthias', 'angel(?:s|fish)?', 'chromis', 'foxface', 'royal gramma', 'dottyback',
] as const; // prettier-ignore

/** What algae and slime grow over. */
export const CARPET = [
  'sand', 'rocks?', 'glass', 'tank', 'algae', 'corals?', 'bottom', 'everywhere', 'sheets?', 'zoas?', 'overflow',
] as const; // prettier-ignore
