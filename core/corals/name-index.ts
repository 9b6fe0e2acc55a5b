import { corals } from './coral-list.ts';
import type { CoralEntry, OldName } from './entry.ts';
import { nameWords, telling } from './name-words.ts';

/** `genus` is an accepted genus of the entry, `species` one it takes in, `old` a name it had or is sold under. */
export type NameKind = 'accepted' | 'genus' | 'species' | 'old' | 'common' | 'hobby' | 'misspelt';

/** One name of one entry, ready to compare. */
export interface IndexedName {
  readonly entry: CoralEntry;
  readonly kind: NameKind;
  readonly text: string;
  /** Its telling words in order, and those joined. */
  readonly words: readonly string[];
  readonly key: string;
  readonly old?: OldName;
}

/** Every name of every entry; misspellings are among them. */
export const indexedNames: readonly IndexedName[] = corals.flatMap(namesOf);

/** Every telling word of a proper name. */
export const properWords: ReadonlySet<string> = new Set(
  indexedNames.filter(({ kind }) => kind !== 'misspelt').flatMap(({ words }) => words),
);

/** All telling words an entry's proper names hold. */
export const wordsOf: ReadonlyMap<CoralEntry, ReadonlySet<string>> = new Map(
  corals.map((entry) => [
    entry,
    new Set(
      indexedNames.filter((n) => n.entry === entry && n.kind !== 'misspelt').flatMap(({ words }) => words),
    ),
  ]),
);

function namesOf(entry: CoralEntry): readonly IndexedName[] {
  const { names, scientific } = entry;
  const every = (kind: NameKind, texts: readonly string[]): IndexedName[] =>
    texts.flatMap((text) => indexed(entry, kind, text));
  return [
    ...every('accepted', [scientific.accepted, ...scientific.accepted.split(' / ')]),
    ...every('genus', scientific.genera),
    ...every('common', names.common.flatMap(withoutBrackets)),
    ...every('hobby', names.hobby),
    ...scientific.superseded.flatMap((old) =>
      indexed(entry, 'old', old.name).map((name) => ({ ...name, old })),
    ),
    ...every('species', scientific.species),
    ...every('misspelt', names.misspelt),
  ];
}

function indexed(entry: CoralEntry, kind: NameKind, text: string): IndexedName[] {
  const words = telling(nameWords(text));
  return words.length === 0 ? [] : [{ entry, kind, text, words, key: words.join('') }];
}

/** "Mushroom coral (soft)" is asked for with and without what stands in brackets. */
function withoutBrackets(text: string): readonly string[] {
  return text.includes('(') ? [text.replace(/\s*\(.*\)/, ''), text] : [text];
}
