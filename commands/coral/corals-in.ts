import type { CoralEntry } from '../../core/corals/entry.ts';
import { namedCoral, type NamedCoral } from '../../core/corals/named.ts';
import { scan } from '../../core/language/tokens.ts';

/** Kinds tried of one name. */
export const MOST_OF_A_NAME = 3;

/** What the names of corals in a text can mean. */
export function coralsIn(text: string): readonly NamedCoral[] {
  const names = scan(text).names.flatMap(({ class: kind, id }) => (kind === 'coral' ? [id] : []));
  return names.flatMap((name) => namedCoral(name) ?? []);
}

/** A coral that stands there already, under the name it was given. */
export interface Stands {
  readonly entry: CoralEntry;
  readonly label: string;
}

/** What stands there already; a name of several is taken as each of the likeliest. */
export function standingIn(text: string | undefined): readonly Stands[] {
  if (text === undefined) return [];
  return coralsIn(text).flatMap(({ name, entries }) =>
    entries.slice(0, MOST_OF_A_NAME).map((entry) => ({ entry, label: name })),
  );
}
