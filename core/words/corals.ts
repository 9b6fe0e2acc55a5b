import type { CoralEntry } from '../corals/entry.ts';
import { findCorals } from '../corals/find.ts';
import { indexedNames } from '../corals/name-index.ts';
import { nameWords, telling } from '../corals/name-words.ts';

/** A coral's name in free text: the corals it can mean, the likeliest first. */
export interface NamedCoral {
  readonly name: string;
  readonly entries: readonly [CoralEntry, ...CoralEntry[]];
}

const keys: ReadonlySet<string> = new Set(indexedNames.map(({ key }) => key));
/** Names that are ordinary words unless "coral" or another part of the name stands with them. */
const EVERYDAY = new Set(
  (
    'anchor blue boulder brain brush bubble bullseye button cabbage cactus candy cap carnation carpet cauliflower clove colony ' +
    'colt corkscrew crust crystal cup daisy disc elegant feather finger fire fox frog galaxy grape hammerhead hedgehog hibiscus ' +
    'hood horn jasmine leaf lettuce lord meat moon mushrom needle octo pagoda peacock pearl phonograph plate pulse ric ridge ' +
    'ruffled sandpaper saucer scroll slipper space starburst sun table thorn tongue tooth tree trumpet tube vase war whisker ' +
    'wonder wrinkle briar doughnut flowerpot antler litho magnifica dura'
  ).split(' '),
);
/** Words of the longest name looked for. */
const LONGEST = 4;
/** At most so many names are taken out of one text. */
const MOST = 6;

/**
 * Corals named in a text, in order, each once. Only whole names count, however they are known to be misspelt; the longest
 * at each place. A name of several corals stays open; an ordinary word ("plate", "cup") needs "coral" beside it.
 */
export function coralsIn(text: string): readonly NamedCoral[] {
  const words = text.split(/[^\p{L}\p{N}'-]+/u).filter((word) => word !== '');
  const found: NamedCoral[] = [];
  for (let at = 0; at < words.length && found.length < MOST; at++) {
    const length = longestAt(words, at);
    if (length === 0) continue;
    const name = words.slice(at, at + length).join(' ');
    const named = meant(name);
    if (named !== undefined && !found.some(({ entries }) => entries[0] === named[0]))
      found.push({ name, entries: named });
    at += length - 1;
  }
  return found;
}

function longestAt(words: readonly string[], at: number): number {
  for (let length = Math.min(LONGEST, words.length - at); length > 0; length--) {
    const part = words.slice(at, at + length);
    const tellings = part.map((word) => telling(nameWords(word)));
    const ends = [tellings[0], tellings.at(-1)];
    const isCoral = /^corals?$/.test(part.at(-1) ?? '');
    if ((ends[0]?.length ?? 0) === 0 || ((ends[1]?.length ?? 0) === 0 && !isCoral)) continue;
    const key = tellings.flat().join('');
    if (length === 1 && EVERYDAY.has(key)) continue;
    if (keys.has(key)) return length;
  }
  return 0;
}

function meant(name: string): NamedCoral['entries'] | undefined {
  const found = findCorals(name);
  if (found.kind === 'one') return [found.entry];
  if (found.kind !== 'several') return undefined;
  const [first, ...more] = found.entries;
  return first === undefined ? undefined : [first, ...more];
}
