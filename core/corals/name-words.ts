/** Words that tell no coral from another. */
const EMPTY = new Set(
  'coral corral cora corl cral coal oral croal corla frag colony piece head my a an the some of with and or sp spp species relative other kind type lps sps nem'.split(
    ' ',
  ),
);

/** Colours, sizes and places a seller puts before a name; left out only when the name is not found with them. */
const TRIMMINGS = new Set(
  'green red blue purple pink orange yellow gold golden white black brown teal grey gray neon metallic rainbow big large huge small baby wild aussie australian indo indonesian'.split(
    ' ',
  ),
);

/**
 * Words of a name that fit many corals: alone they name none ("orange", "rose coral", "rock"). The last two are species
 * in several genera, not all of them in the guide.
 */
const VAGUE = new Set(
  'rose rock sand mini micro open smooth great hairy fuzzy spiny mat bird eye deepwater nps elegan robusta'.split(
    ' ',
  ),
);

/** Whether words can name a coral only as its whole name, not as a part of one. */
export function areVague(words: readonly string[]): boolean {
  return words.every((word) => TRIMMINGS.has(word) || VAGUE.has(word));
}

/** A text as plain words: lower case, no accents or punctuation, each word without its plural s. */
export function nameWords(text: string): readonly string[] {
  return text
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/['\u2019`]/g, '')
    .split(/[^a-z0-9]+/)
    .filter((word) => word !== '')
    .map((word) => word.replace(/(?<=^[a-z]{3,})corals?$/, ''))
    .map((word) => (word.length > 3 ? word.replace(/s$/, '') : word));
}

/** The words that tell corals apart. */
export function telling(words: readonly string[]): readonly string[] {
  return words.filter((word) => !EMPTY.has(word) && !/^\d+$/.test(word));
}

export function withoutTrimmings(words: readonly string[]): readonly string[] {
  return words.filter((word) => !TRIMMINGS.has(word));
}

/**
 * A word as it sounds, so that the usual slips in Latin names fall together: ph and f, y and i, c and k, x and z and
 * s, ae and e, single and double letters ("hidnofora" and "hydnophora", "zenia" and "xenia").
 */
export function soundOf(word: string): string {
  return word
    .replace(/ph/g, 'f')
    .replace(/y/g, 'i')
    .replace(/ae|oe/g, 'e')
    .replace(/c(?=[ei])/g, 's')
    .replace(/ck|c|q/g, 'k')
    .replace(/(?<=[tr])h/g, '')
    .replace(/^x|z/g, 's')
    .replace(/(.)\1+/g, '$1');
}
