import type { SourceCode } from '../../sources.ts';

/** At most this many words on a card, cautions included. */
export const MOST_WORDS = 120;

/** The cards, by the title they are asked for with. At most 25: they are offered as one list. */
export const primerIds = [
  'cycle',
  'first corals',
  'where corals come from',
  'acclimation',
  'dips and quarantine',
  'room to grow',
  'PAR',
  'flow',
  'feeding',
  'alkalinity and calcium',
  'magnesium',
  'pH',
  'nutrients',
  'limewater',
  'salinity',
  'mixing salt water',
  'top-off',
  'water changes',
  'net volume',
  'units',
  'test kits',
  'palytoxin',
  'water and mains',
  'moving house',
  'holiday',
] as const;

export type PrimerId = (typeof primerIds)[number];

/** One card to drop in a channel: one thought a keeper needs, its numbers and where they come from. */
export interface Primer {
  readonly id: PrimerId;
  /** Lower-case words a question about it uses, besides the id. */
  readonly names: readonly string[];
  /** The card in one sentence. */
  readonly headline: string;
  readonly points: readonly (readonly [label: string, text: string])[];
  readonly steps?: readonly string[];
  readonly cautions?: readonly string[];
  /** Cards to read next. */
  readonly see: readonly PrimerId[];
  readonly sources: readonly SourceCode[];
}
