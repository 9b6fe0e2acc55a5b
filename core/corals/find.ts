import { basisName } from './basis-words.ts';
import { corals } from './coral-list.ts';
import type { CoralEntry, OldName } from './entry.ts';
import type { Genus } from './genera.ts';
import { matchNames, nearNames, type Matches } from './match-names.ts';
import { indexedNames } from './name-index.ts';
import { nameWords, telling, withoutTrimmings } from './name-words.ts';
import { respell } from './spelling.ts';
import { relativesOf, unpagedGenera, unpagedIn } from './unpaged.ts';

/**
 * What a name leads to. `readAs` is set when the name was not taken as written ("Hydnophora" for "hydnofora");
 * `nameNote` when it is an older name ("Favia (Indo-Pacific species) is now Dipsastraea").
 */
export type Found =
  | {
      readonly kind: 'one';
      readonly entry: CoralEntry;
      readonly readAs?: string;
      readonly nameNote?: string;
    }
  | { readonly kind: 'several'; readonly entries: readonly CoralEntry[]; readonly readAs?: string }
  | { readonly kind: 'none'; readonly near: readonly CoralEntry[] }
  /** A real genus the guide has no page on, or several that a misspelt name can mean. `near` is what may help instead. */
  | {
      readonly kind: 'no page';
      readonly genera: readonly [Genus, ...Genus[]];
      readonly near: readonly CoralEntry[];
      readonly misspelt: boolean;
    };

/** How many are shown where none is taken. */
const MOST_NEAR = 5;

/** The longest name looked up; more is no name. */
export const MAX_CORAL_NAME_LENGTH = 80;

/**
 * Finds corals by accepted, older, common or hobby name, whatever the case, spacing, plural or punctuation. A name
 * that fits several is offered as several, the likeliest first; a misspelt name is taken only when it is close and
 * can mean one coral, and says how it was read.
 */
export function findCorals(text: string): Found {
  if (text.length > MAX_CORAL_NAME_LENGTH) return { kind: 'none', near: [] };
  const given = nameWords(text);
  const words = given.join() === 'nem' ? ['anemone'] : telling(given);
  if (words.length === 0) return { kind: 'none', near: [] };
  const bare = withoutTrimmings(words);
  const genus = unpagedIn(words);
  if (genus !== undefined)
    return { kind: 'no page', genera: [genus], near: relativesOf(genus), misspelt: false };
  return (
    asWritten(words) ??
    (bare.length > 0 && bare.length < words.length ? asWritten(bare) : undefined) ??
    misspelt(words) ??
    (bare.length > 0 && bare.length < words.length ? misspelt(bare) : undefined) ?? {
      kind: 'none',
      near: nearNames(words),
    }
  );
}

/** Names to suggest: the accepted name and the first common name of each coral. */
export function coralNames(): readonly string[] {
  return [...new Set(corals.flatMap(({ names, scientific }) => [names.common[0], scientific.accepted]))];
}

function asWritten(words: readonly string[]): Found | undefined {
  return found(matchNames(words));
}

/** Known misspellings and near spellings together: a listed slip of one coral may be that of its whole genus. */
function misspelt(words: readonly string[]): Found | undefined {
  const key = words.join('');
  const listed = indexedNames.filter((name) => name.kind === 'misspelt' && name.key === key);
  const respelt = respell(words);
  const readings = (respelt?.readings ?? [])
    .map((reading) => ({ reading, matches: matchNames(reading) }))
    .filter(({ matches }) => matches.entries.length > 0);
  const entries = [
    ...new Set([...readings.flatMap(({ matches }) => matches.entries), ...listed.map(({ entry }) => entry)]),
  ];
  const [first] = entries;
  const unpaged = (respelt?.genera ?? []).flatMap((word) => unpagedGenera.get(word) ?? []);
  const [genus, ...others] = listed.length > 0 ? [] : unpaged;
  if (genus !== undefined) {
    const near = [...new Set([...entries, ...relativesOf(genus)])].slice(0, MOST_NEAR);
    return respelt?.close === true
      ? { kind: 'no page', genera: [genus, ...others], near, misspelt: true }
      : { kind: 'none', near };
  }
  if (first === undefined) return undefined;
  if (listed.length === 0 && respelt?.close === false)
    return { kind: 'none', near: entries.slice(0, MOST_NEAR) };
  const reading = readings.length === 1 ? readings[0] : undefined;
  const readAs = reading === undefined ? first.names.common[0] : properly(reading.reading, entries);
  if (entries.length > 1)
    return reading === undefined ? { kind: 'several', entries } : { kind: 'several', entries, readAs };
  const exact = reading === undefined ? undefined : found(reading.matches);
  return exact?.kind === 'one' ? { ...exact, readAs } : { kind: 'one', entry: first, readAs };
}

function found({ entries, met }: Matches): Found | undefined {
  const [entry] = entries;
  if (entry === undefined) return undefined;
  if (entries.length > 1) return { kind: 'several', entries };
  const old = met.get(entry)?.old;
  return old === undefined ? { kind: 'one', entry } : { kind: 'one', entry, nameNote: nowCalled(old, entry) };
}

function nowCalled(old: OldName, { scientific }: CoralEntry): string {
  const name = old.note === undefined ? old.name : `${old.name} (${old.note})`;
  const accepted = old.now ?? scientific.accepted;
  return `${nowWords[old.kind](name, accepted)} (${basisName(old.basis)})`;
}

const nowWords: Readonly<Record<OldName['kind'], (name: string, accepted: string) => string>> = {
  older: (name, accepted) => `${name} is now ${accepted}`,
  spelling: (name, accepted) => `${name} is spelt ${accepted}`,
  'trade label': (name, accepted) => `${accepted} is sold as ${name}`,
};

/** The words as one of these corals' names writes them, else as they are. */
function properly(words: readonly string[], entries: readonly CoralEntry[]): string {
  const key = words.join('');
  const name = indexedNames.find((one) => one.key === key && entries.includes(one.entry));
  return name?.text ?? words.join(' ');
}
