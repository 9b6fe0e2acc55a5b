import type { Kind } from '../../core/language/kinds.ts';
import { cases } from './all.ts';
import { type Case, faults } from './case.ts';

/**
 * The cases that are not answered outright as expected, each with the kind whose button leads to the right answer, where
 * it is offered. A case leaves this list when it is mended: the tests fail while an answered one stands here.
 */
export const misread: Readonly<Record<string, Kind | undefined>> = {
  // Unsure whether the daily use or the dose is wanted: asks which, the dose among the buttons.
  A01: 'dose-amount',
  // Taken for a rule of a dose, "50 g" for 50 gallons: judges what 100 g do, not the strength of soda ash.
  A12: undefined,
  // The old phosphate is taken for now and the zeros for nothing, so no sum of either; the card of both at zero is offered.
  A14: undefined,
  // Asks whether somebody is hurt; neither the wish (9.3 again) nor a dose is heard.
  A16: undefined,
  // Unsure; "limewater in the top-off" is offered first and is right.
  A18: 'limewater',
  // Read as a salinity to be raised: leads with the raise, leaves it only on condition and names no 4 %.
  B09: undefined,
  // Taken for a rule of specific gravity: judges the reading of the fluid, not the tank by it.
  B13: undefined,
  // Unsure; "hours of light" is offered, but takes it for a change from 5 h to 12 h.
  C05: undefined,
  // Taken for corals that spread by themselves: how to hold those in, not what the fluffy things may be.
  D03: undefined,
  // Unsure; the hours of light and the reminder are offered, and either is right.
  E03: 'remind',
  // The readings are put to the wrong tests, so that nitrite seems not past its peak: half way, not nearly there.
  F01: undefined,
  // Unsure; "two tests of one water" is offered, but takes the usual 8 for the second kit.
  G05: undefined,
  // Not understood; peroxide is not named, so the refusal of an amount is not reached. No amount is given either.
  G07: undefined,
  // Unsure; none of what is offered works out both volumes.
  G09: undefined,
  // "ppb P" is not heard as phosphate: asks what the light meter reads.
  G12: undefined,
};

const entries = Object.entries(cases);

/** The cases that are answered outright. */
export const outright: readonly (readonly [string, Case])[] = entries.filter(([id]) => !(id in misread));

/** The cases that are not. */
export const missed: readonly (readonly [string, Case])[] = entries.filter(([id]) => id in misread);

/** What an answer to any case says that it must not, right or misread. */
export function forbidden(text: string, { never }: Case): readonly string[] {
  return faults(text, { values: [], says: [], never });
}
