import type { CardKind, cardMeanings } from '../../language/cards.ts';
import type { Met } from '../../language/met.ts';

/** A card of the house where one of `if` (and one of `and`) was met and none of `unless`; without them always. */
export interface Way<Id extends string> {
  readonly card: Id;
  readonly if?: readonly Met[];
  readonly and?: readonly Met[];
  readonly unless?: readonly Met[];
}

type LearntCard<K extends CardKind> = K extends CardKind ? keyof (typeof cardMeanings)[K] & string : never;

/** The ways of every learnt card (language/cards.ts) to cards of the house; the first that fits is taken. */
export type Ways<K extends CardKind, Id extends string> = Readonly<Record<LearntCard<K>, readonly Way<Id>[]>>;

export const ZOA = ['corals.zoanthid', 'corals.palythoa'] as const;

/** What carries mains. */
export const MAINS = [
  'hardware.residual',
  'hardware.breaker',
  'hardware.plug',
  'hardware.powerStrip',
  'hardware.extensionLead',
] as const;
