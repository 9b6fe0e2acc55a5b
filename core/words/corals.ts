import { indexedNames } from '../corals/name-index.ts';
import { nameWords, telling } from '../corals/name-words.ts';
import { namedCoral, type NamedCoral } from '../corals/named.ts';
import { everydayCoralWords } from '../language/lexicon/everyday-coral-words.ts';

const keys: ReadonlySet<string> = new Set(indexedNames.map(({ key }) => key));
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
    const named = namedCoral(name);
    if (named !== undefined && !found.some(({ entries }) => entries[0] === named.entries[0]))
      found.push(named);
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
    if (length === 1 && everydayCoralWords.has(key)) continue;
    if (keys.has(key)) return length;
  }
  return 0;
}
