import type { Basis, Bases } from './basis.ts';
import { coralSources, type CoralSourceKey } from './sources.ts';

/** "Lapid et al. 2004" for a source with authors, else its key: "NOAA 2014", "WoRMS". */
export function cited(key: CoralSourceKey): string {
  return citations.get(key) ?? key;
}

/**
 * What values rest on, in words for a member: "common practice", "from memory", "project rule", "published: Lapid et
 * al. 2004 (note)". Each is said once; memory is never shown as published.
 */
export function basisWords(...bases: readonly Bases[]): string {
  const notes = new Map<string, Set<string>>();
  for (const basis of bases.flat()) {
    const kind = kindWords(basis);
    const known = notes.get(kind) ?? new Set();
    if (basis.note !== undefined) known.add(basis.note);
    notes.set(kind, known);
  }
  return [...notes]
    .map(([kind, known]) => (known.size === 0 ? kind : `${kind} (${[...known].join('; ')})`))
    .join('; ');
}

/** The same without notes, to stand in brackets behind a number: "common practice", "published: Lapid et al. 2004". */
export function basisName(...bases: readonly Bases[]): string {
  const [first, second] = bases;
  if (first !== undefined && second === undefined && first.length === 1) return kindWords(first[0]);
  return [...new Set(bases.flat().map(kindWords))].join('; ');
}

function kindWords(basis: Basis): string {
  switch (basis.kind) {
    case 'published':
      return `published: ${cited(basis.source)}`;
    case 'practice':
      return 'common practice';
    case 'memory':
      return 'from memory';
    case 'project rule':
      return 'project rule';
  }
}

const citations: ReadonlyMap<string, string> = new Map(
  Object.entries(coralSources).map(([key, { title }]) => [key, citation(key, title)]),
);

function citation(key: string, title: string): string {
  const found = /^(\D*?)(?: et al\.)? (\d{4})\b/.exec(title);
  const [, authors = '', year = ''] = found ?? [];
  if (!/ [A-Z]\.|^Madin$/.test(authors)) return key.replace(/(?<=[A-Za-z])(?=\d{4})/, ' ');
  const surnames = authors.split(', ').map((author) => author.replace(/ (?:[A-Z]\.-?)+$/, ''));
  const [first = '', second] = surnames;
  if (surnames.length > 2 || found?.[0].includes(' et al.') === true) return `${first} et al. ${year}`;
  return second === undefined ? `${first} ${year}` : `${first} & ${second} ${year}`;
}
