/** What lengths are told in. */
export type LengthUnit = 'cm' | 'in';

/** Exactly, by definition (NIST SP 811, 2008, appendix B.8). */
export const CM_PER_IN = 2.54;

export function cmOf(unit: LengthUnit): number {
  return unit === 'cm' ? 1 : CM_PER_IN;
}
