import type { SourceCode } from '../../sources.ts';

/**
 * What to do first when somebody was hurt in one way. General first aid: a doctor decides. What is known of a source
 * stands in `basis`; nothing here is called published that was only remembered. No card holds an amount of a medicine.
 */
export interface HurtCard {
  /** On a button: at most 40 letters. */
  readonly label: string;
  /** The act that comes first, in one or two short sentences. */
  readonly first: string;
  /** At most five, short enough to be read with shaking hands. */
  readonly steps: readonly string[];
  readonly never: readonly string[];
  /** What the card rests on. */
  readonly basis: readonly string[];
  readonly sources: readonly SourceCode[];
}

/** What a card without another source rests on. */
export const FIRST_AID = 'common practice of first aid and poison centres, from memory';

/** Stands last on every card. */
export const NO_TREATMENT =
  'I am no doctor and give no treatment. Bring the product label, and say what was handled and when.';

/** How an eye is rinsed; at least 20 minutes are common practice of poison centres, from memory. */
export const EYE_RINSE = 'eyes for at least 20 minutes, lids open, lens out';
