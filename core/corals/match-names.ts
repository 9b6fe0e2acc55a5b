import { corals } from './coral-list.ts';
import type { CoralEntry } from './entry.ts';
import { areVague } from './name-words.ts';
import { indexedNames, wordsOf, type IndexedName, type NameKind } from './name-index.ts';

/** The corals that answer to these words, the best first, and the old name by which a coral was met, if it was. */
export interface Matches {
  readonly entries: readonly CoralEntry[];
  readonly met: ReadonlyMap<CoralEntry, IndexedName>;
}

/**
 * The corals called by these telling words, spelt right. One alone when the words are its whole name and no other
 * coral has that name or a longer one ending in it ("torch", but not "bubble": there is a pearl bubble coral).
 */
export function matchNames(words: readonly string[]): Matches {
  const key = words.join('');
  const whole = indexedNames.filter((name) => name.kind !== 'misspelt' && name.key === key);
  const holders = new Set(whole.map(({ entry }) => entry));
  const alone = only(holders);
  const met = new Map(whole.filter(isOldOnly).map((name) => [name.entry, name]));
  if (alone !== undefined && whole.some(isFormal) && !shared(words, alone)) return { entries: [alone], met };
  const loose = areVague(words)
    ? []
    : corals.filter((entry) => words.every((word) => wordsOf.get(entry)?.has(word)));
  const inOneName = new Set(
    indexedNames
      .filter((name) => name.kind !== 'misspelt' && words.every((word) => name.words.includes(word)))
      .map(({ entry }) => entry),
  );
  const timesWhole = (entry: CoralEntry): number => whole.filter((name) => name.entry === entry).length;
  const rank = (entry: CoralEntry): number =>
    (whole.some((name) => name.entry === entry && name.text === entry.names.common[0]) ? -20 : 0) +
    (holders.has(entry) ? 0 : inOneName.has(entry) ? 20 : 40) +
    (entry.tier === 'core' ? 0 : 10) -
    timesWhole(entry);
  const entries = [...new Set([...holders, ...loose])].sort((a, b) => rank(a) - rank(b));
  return { entries, met };
}

/** Up to five corals that share a word with the text, those that share most first. */
export function nearNames(words: readonly string[]): readonly CoralEntry[] {
  const shares = (entry: CoralEntry): number => words.filter((word) => wordsOf.get(entry)?.has(word)).length;
  return corals
    .map((entry) => ({ entry, score: shares(entry) }))
    .filter(({ score }) => score > 0)
    .sort((a, b) => b.score - a.score)
    .slice(0, 5)
    .map(({ entry }) => entry);
}

const today = new Set<NameKind>(['accepted', 'genus', 'species', 'common']);

/** An old name that is not also a name of today, such as a spelling that became a common name. */
function isOldOnly({ kind, entry, key }: IndexedName): boolean {
  return kind === 'old' && !indexedNames.some((n) => n.entry === entry && n.key === key && today.has(n.kind));
}

function isFormal({ kind }: IndexedName): boolean {
  return kind !== 'hobby' && kind !== 'misspelt';
}

/** Whether another coral's name is these words or ends in them. */
function shared(words: readonly string[], mine: CoralEntry): boolean {
  return indexedNames.some(
    (name) => name.kind !== 'misspelt' && name.entry !== mine && endsIn(name.words, words),
  );
}

function endsIn(words: readonly string[], tail: readonly string[]): boolean {
  return words.slice(-tail.length).join(' ') === tail.join(' ');
}

function only<T>(values: ReadonlySet<T>): T | undefined {
  return values.size === 1 ? [...values][0] : undefined;
}
