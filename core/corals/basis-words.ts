import type { Basis, Bases } from './basis.ts';
import { sourceLabel } from '../source.ts';
import { coralSources, type CoralSourceKey } from './sources.ts';

/** What a text calls a source: "Lapid et al. 2004", "NOAA Fisheries 2014". An answer that says it lists the source. */
export function cited(key: CoralSourceKey): string {
  return sourceLabel(coralSources[key]) ?? key;
}

/** "published: Lapid et al. 2004; Chornesky 1983": stands in brackets behind what was read there. */
export function readIn(...keys: readonly CoralSourceKey[]): string {
  return `published: ${keys.map(cited).join('; ')}`;
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
      return readIn(basis.source);
    case 'practice':
      return 'common practice';
    case 'memory':
      return 'from memory';
    case 'project rule':
      return 'project rule';
  }
}
