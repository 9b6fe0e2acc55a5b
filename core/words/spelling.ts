import { editDistance } from './edit-distance.ts';

/** Long words of trouble that no other word is near to, as they are spelt; plurals count as known, too. */
const WORDS = [
  'anemone',
  'aiptasia',
  'electricity',
  'electrocuted',
  'ammonia',
  'alkalinity',
  'salinity',
  'temperature',
  'palytoxin',
  'bryopsis',
  'dinoflagellates',
  'cyanobacteria',
  'planaria',
  'magnesium',
  'calcium',
  'phosphate',
  'emergency',
  'unconscious',
  'unresponsive',
  'swallowed',
  'vomiting',
  'poisoned',
  'poisoning',
  'peroxide',
  'muriatic',
  'chlorine',
  'hydroxide',
  'bristleworm',
  'lionfish',
  'flatworm',
  'overflowed',
  'overflowing',
  'overheating',
  'overdosed',
  'wavemaker',
  'powerhead',
  'suffocating',
] as const;

/** Words as near to one of those that mean something else. */
const OTHERS = new Set([
  'ammonium',
  'calcite',
  'conscious',
  'temperate',
  'shallowed',
  'phosphite',
  'overdoses',
  'overdose',
  'overflows',
  'overflow',
  'chloride',
  'chlorite',
  'chlorinated',
  'responsive',
  'hydroxides',
  'overheated',
  'overeating',
  'poisonous',
  'poisons',
  'poison',
  'unconsciously',
  'electrocute',
]);

/** Shorter words are too near to others for that: how they are misspelt is listed. */
const LISTED: readonly (readonly [RegExp, string])[] = [
  [
    /\b(smok|boil|leak|burn|dy|gasp|bleed|puk|throw|shak|spark|melt|clos|tingl|chok|foam|drool|swell|sting|cough|breath|flood|peel|eat|lick|clean|scrubb|open|float)in\b'?/g,
    '$1ing',
  ],
  [/\b(overflow|leak|crack|zapp|flood|shock|drown|bleach)d\b/g, '$1ed'],
  [/\bshok\b/g, 'shock'],
  [/\bzapt\b/g, 'zapped'],
  [/\bshock?t\b|\bshoked\b/g, 'shocked'],
  [/\bcrak(ed|s|ing)?\b/g, 'crack$1'],
  [/\b(?:leek|leack)(ing|ed|s)\b/g, 'leak$1'],
  [/\bflod+(ed|ing)\b/g, 'flood$1'],
  [/\bsw(?:ol|oll?i|oll?a)l?en?\b|\bswoln\b/g, 'swollen'],
  [/\bswel(ing|ed)\b/g, 'swell$1'],
  [/\bbl(?:ee|ea|e)t?ch(ed|ing|es)?\b/g, 'bleach$1'],
  [/\b(?:poisen|posion|poisin)(ed|ing|s)?\b/g, 'poison$1'],
  [/\bpoisning\b/g, 'poisoning'],
  [/\b(?:breating|brething|breethin?g)\b/g, 'breathing'],
  [/\b(?:vomm?itt?)(ing|ed)\b/g, 'vomit$1'],
  [/\b(?:fea?ver|fevor)\b/g, 'fever'],
  [/\b(?:di|de)zz?y\b/g, 'dizzy'],
  [/\b(?:dieing|diying|dyeing)\b/g, 'dying'],
  [/\bded\b/g, 'dead'],
  [/\b(?:algea|alge|algee|aglae|algie|alage|algaes|algas)\b/g, 'algae'],
  [/\b(?:cyno|syano|ciano|cyanno|cayno)\b/g, 'cyano'],
  [/\b(?:di[ao]toms?e?s?|diatomes?)\b/g, 'diatoms'],
  [/\b(?:zooa|zoia|zoe)s\b/g, 'zoas'],
  [/\b(?:maj[ao]n[oa]|mojano)(s?)\b/g, 'majano$1'],
  [
    /\b(?:an+[aeio]n+[aeio]m[eiy]+|an+[aeio]m[aeio]n[eiy]+|am[aeio]n[aeio][mn][ei]+|nemone)(s?)\b/g,
    'anemone$1',
  ],
  [/\b(?:amonia|amonnia|amonea)\b/g, 'ammonia'],
  [/\b(?:receed|receid|reseed)(ing|ed|s)\b/g, 'reced$1'],
  [/\b(?:pol+[iu]ps?|pollyps?)\b/g, 'polyps'],
  [/\b(?:gelly|jely|jelley)\b/g, 'jelly'],
  [/\bslimey\b/g, 'slimy'],
  [/\bshrivl?ed\b/g, 'shriveled'],
  [/\b(?:clowdy|cloudey)\b/g, 'cloudy'],
  [/\bheeter\b/g, 'heater'],
  [/\bthru\b/g, 'through'],
  [/\bnite\b/g, 'night'],
];

/** From this length on two letters may be wrong. */
const LONG = 10;

/**
 * Mends the spelling of words of trouble in a cleaned text: frightened people mistype. Only words that are near to no
 * other are changed. Check: "anenome" to "anemone", "electricty" to "electricity"; "ammonium" stays.
 */
export function respelt(text: string): string {
  const listed = LISTED.reduce((sofar, [wrong, right]) => sofar.replace(wrong, right), text);
  return listed.replace(/(?<![\w./-])[a-z]{7,18}(?![\w/])/g, mended);
}

function mended(word: string): string {
  const one = word.replace(/s$/, '');
  if (OTHERS.has(word) || WORDS.some((known) => known === word || known === one)) return word;
  const plural = nearest(one);
  return nearest(word) ?? (plural === undefined || one === word ? word : `${plural}s`);
}

function nearest(word: string): string | undefined {
  return WORDS.find(
    (known) =>
      known[0] === word[0] &&
      Math.abs(known.length - word.length) <= 2 &&
      editDistance(known, word) <= (known.length >= LONG ? 2 : 1),
  );
}
