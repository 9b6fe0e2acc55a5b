/** What lengths are told in. */
export type LengthUnit = 'cm' | 'in';

/** Exactly, by definition (NIST SP 811, 2008, appendix B.8). */
export const CM_PER_IN = 2.54;

export function cmOf(unit: LengthUnit): number {
  return unit === 'cm' ? 1 : CM_PER_IN;
}

/** Countries whose people measure in inches: CLDR supplemental data, measurement system US, from memory. */
const IN_INCHES: ReadonlySet<string> = new Set(['US', 'LR']);

/** What somebody with this locale (BCP 47) measures lengths in; a language alone stands for its likely country. */
export function lengthUnitOf(locale: string | undefined): LengthUnit {
  const region = locale === undefined ? undefined : new Intl.Locale(locale).region;
  return region !== undefined && IN_INCHES.has(region) ? 'in' : 'cm';
}
