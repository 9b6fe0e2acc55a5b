import type { CoralEntry } from './entry.ts';
import { indexedNames } from './name-index.ts';
import { nameWords, telling } from './name-words.ts';

/** Words one name can have. */
const MOST_WORDS = 4;
/** A coral as somebody called it, where that is another name than our first one. */
export interface TypedName {
  readonly entry: CoralEntry;
  /** As it was typed. */
  readonly name: string;
}

/**
 * The names of corals in a text that each belong to one coral alone and are not our own first name for it, or a part of
 * that: "trumpet" for the candy cane coral. A misspelt name is not kept.
 */
export function typedNames(text: string): readonly TypedName[] {
  const words = [...text.matchAll(/[\p{L}'’-]+/gu)].map((match) => ({
    from: match.index,
    to: match.index + match[0].length,
  }));
  const found = new Map<CoralEntry, string>();
  for (let count = MOST_WORDS; count > 0; count--) {
    for (let at = 0; at + count <= words.length; at++) {
      const name = text.slice(words[at]?.from, words[at + count - 1]?.to);
      const entry = beginsAndEnds(name) ? entryCalled(name) : undefined;
      if (entry !== undefined && !found.has(entry)) found.set(entry, name);
    }
  }
  return [...found]
    .filter(([entry, name]) => !isOurs(entry, name))
    .map(([entry, name]) => ({ entry, name: name.replaceAll(/\s+/g, ' ') }));
}

/** Begins and ends with a word that tells corals apart, or ends with "coral". */
function beginsAndEnds(name: string): boolean {
  const words = nameWords(name.replace(/\s+corals?$/i, ''));
  return [words.slice(0, 1), words.slice(-1)].every((end) => telling(end).length > 0);
}

/** The one coral of a name that is spelt right. */
function entryCalled(name: string): CoralEntry | undefined {
  const key = telling(nameWords(name)).join('');
  if (key === '') return undefined;
  const holders = new Set(
    indexedNames.filter((one) => one.kind !== 'misspelt' && one.key === key).map(({ entry }) => entry),
  );
  return holders.size === 1 ? [...holders][0] : undefined;
}

function isOurs({ names }: CoralEntry, name: string): boolean {
  const ours = nameWords(names.common[0]);
  return telling(nameWords(name)).every((word) => ours.includes(word));
}

/** A text of ours with corals called as somebody called them. */
export function calledAs(text: string, names: readonly TypedName[]): string {
  return names.reduce((told, { entry, name }) => {
    const [ours] = entry.names.common;
    if (!told.includes(ours)) return told;
    return told.replaceAll(patternOf(ours), (_, at: number) =>
      isSentenceStart(told.slice(0, at)) ? name.slice(0, 1).toUpperCase() + name.slice(1) : name,
    );
  }, text);
}

function isSentenceStart(before: string): boolean {
  return before === '' || /[.:?!]\s+$/.test(before);
}

const patterns = new Map<string, RegExp>();

/** A name, where it is no part of a longer word. */
function patternOf(name: string): RegExp {
  const known = patterns.get(name);
  if (known !== undefined) return known;
  const escaped = name.replaceAll(/[.*+?^${}()|[\]\\]/g, String.raw`\$&`);
  const made = new RegExp(String.raw`(?<![\p{L}-])${escaped}(?![\p{L}-])`, 'gu');
  patterns.set(name, made);
  return made;
}
