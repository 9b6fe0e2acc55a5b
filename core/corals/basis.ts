import type { CoralSourceKey } from './sources.ts';

/**
 * Where one value comes from. `published` was read in the named source, mostly its abstract (see `seen` there);
 * `practice` is common practice without a source; `memory` was recalled and never checked, the weakest of all;
 * `project rule` is worked out here from other values. Only `published` may be shown as published.
 */
export type Basis =
  | { readonly kind: 'published'; readonly source: CoralSourceKey; readonly note?: string }
  | { readonly kind: 'practice' | 'memory' | 'project rule'; readonly note?: string };

/** One basis or several: a range can rest on a source at one end and on memory at the other. */
export type Bases = readonly [Basis, ...Basis[]];

/** A sentence about a coral, without a full stop, and what it rests on. */
export interface Statement {
  readonly text: string;
  readonly basis: Bases;
}

export const practice: Basis = { kind: 'practice' };
export const memory: Basis = { kind: 'memory' };

/** Read in `source`; `note` says what was read there ("whole genus", "only 2 values"). */
export function published(source: CoralSourceKey, note?: string): Basis {
  return note === undefined ? { kind: 'published', source } : { kind: 'published', source, note };
}

/** From memory; `note` says which part, or what it was judged from. */
export function recalled(note: string): Basis {
  return { kind: 'memory', note };
}

/** A statement with its bases. */
export function said(text: string, ...basis: Bases): Statement {
  return { text, basis };
}

/** Every `keepClearCm` rests on this: reach at full stretch plus what an edge grows in a year, or more by practice. */
export const spacingRule: Bases = [
  {
    kind: 'project rule',
    note: 'at least reach at full stretch plus a year of growth of an edge, rounded up',
  },
  practice,
];
