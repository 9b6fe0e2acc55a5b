import { corals } from './coral-list.ts';
import type { CoralEntry } from './entry.ts';
import { genera, type Genus } from './genera.ts';
import { indexedNames } from './name-index.ts';
import { nameWords } from './name-words.ts';

/** A genus as one plain word, as names are compared. */
function keyOf(name: string): string {
  return nameWords(name).join('');
}

/** First words of the guide's scientific names: the genera it has something to say of. */
const inGuide: ReadonlySet<string> = new Set(
  indexedNames
    .filter(({ kind }) => ['accepted', 'genus', 'species', 'old'].includes(kind))
    .flatMap(({ words: [first = ''] }) => first),
);
/** Whole names of the guide in any spelling it lists; they are its own, whatever else they are. */
const guideKeys: ReadonlySet<string> = new Set(indexedNames.map(({ key }) => key));

/** Real genera without a page here, by the word they are typed as. */
export const unpagedGenera: ReadonlyMap<string, Genus> = new Map(
  genera
    .map((genus): [string, Genus] => [keyOf(genus.name), genus])
    .filter(([key]) => !inGuide.has(key) && !guideKeys.has(key)),
);

/** Every real genus, as a word. */
export const genusWords: ReadonlySet<string> = new Set(genera.map(({ name }) => keyOf(name)));

/** The genus without a page that these words are of; a genus of the guide beside it makes them a name of that one, and so does "micro mussa". */
export function unpagedIn(words: readonly string[]): Genus | undefined {
  if (guideKeys.has(words.join('')) || words.some((word) => inGuide.has(word))) return undefined;
  return words.map((word) => unpagedGenera.get(word)).find((genus) => genus !== undefined);
}

/** How many relatives are offered. */
const MOST_RELATIVES = 5;

/**
 * Corals of the guide that a genus is nearest to: those of the genus it is now; else of its family, those whose page
 * speaks of it first, then the small-polyped brains and stars most such genera look like, then what is commonly kept.
 */
export function relativesOf({ name, now, family }: Genus): readonly CoralEntry[] {
  const kin = new Set(genera.filter((one) => one.family === family).map((one) => one.name));
  const today = now === undefined ? [] : corals.filter(({ scientific }) => scientific.genera.includes(now));
  const rank = ({ scientific, tags, tier }: CoralEntry): number =>
    (scientific.note?.text.includes(name) === true ? 0 : 4) +
    (tags.includes('faviid type') ? 0 : 2) +
    (tier === 'core' ? 0 : 1);
  const near = corals.filter((entry) => entry.scientific.genera.some((one) => kin.has(one)));
  return (today.length > 0 ? today : near.sort((a, b) => rank(a) - rank(b))).slice(0, MOST_RELATIVES);
}
