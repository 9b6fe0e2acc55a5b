import type { CoralEntry } from './entry.ts';
import { findCorals } from './find.ts';

/** A coral's name as it was written: the corals it can mean, the likeliest first. */
export interface NamedCoral {
  readonly name: string;
  readonly entries: readonly [CoralEntry, ...CoralEntry[]];
}

/** What a name can mean (no anemone is called a coral); undefined where the guide has no page on it. */
export function namedCoral(name: string): NamedCoral | undefined {
  const found = findCorals(name);
  const all = found.kind === 'one' ? [found.entry] : found.kind === 'several' ? found.entries : [];
  const noAnemone = / corals?$/i.test(name) ? all.filter(({ group }) => group !== 'anemone') : [];
  const [first, ...more] = noAnemone.length > 0 ? noAnemone : all;
  if (first === undefined) return undefined;
  // "mushrooms" are no mushroom leather and no plate coral, though these bear the word.
  const meant = first.group === 'mushroom' ? more.filter(({ group }) => group === 'mushroom') : more;
  return { name, entries: [first, ...meant] };
}

/** The entry of a name that can mean only one, or whose own first common name it is ("bubble coral"). */
export function onlyEntry({ name, entries }: NamedCoral): CoralEntry | undefined {
  const [first] = entries;
  const isOwn = first.names.common[0].toLowerCase() === name.toLowerCase();
  return entries.length === 1 || isOwn ? first : undefined;
}
