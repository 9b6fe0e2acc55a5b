import { fromUnit } from './format.ts';

/** The units somebody wants numbers in, by symbol of unit.ts; what is absent was not chosen. */
export interface ChosenUnits {
  readonly volume?: (typeof volumeSymbols)[number] | undefined;
  readonly length?: (typeof lengthSymbols)[number] | undefined;
  readonly temperature?: (typeof temperatureSymbols)[number] | undefined;
  readonly alkalinity?: (typeof alkalinitySymbols)[number] | undefined;
}

export const volumeSymbols = ['L', 'US gal', 'imp gal'] as const;
export const lengthSymbols = ['cm', 'in'] as const;
export const temperatureSymbols = ['°C', '°F'] as const;
export const alkalinitySymbols = ['dKH', 'meq/L', 'ppm CaCO3'] as const;

/** What lengths are told in. */
export type LengthUnit = (typeof lengthSymbols)[number];

/** Exactly, by definition: 1 in = 2.54 cm (NIST SP 811, 2008, appendix B.8). */
export function cmOf(unit: LengthUnit): number {
  return fromUnit('length', 1, unit);
}

/** One for each kind that the first of these chose. */
export function firstChosen(...choices: readonly (ChosenUnits | undefined)[]): ChosenUnits {
  const of = <K extends keyof ChosenUnits>(kind: K): ChosenUnits[K] =>
    choices.find((one) => one?.[kind] !== undefined)?.[kind];
  return {
    volume: of('volume'),
    length: of('length'),
    temperature: of('temperature'),
    alkalinity: of('alkalinity'),
  };
}

export const metric: ChosenUnits = { volume: 'L', length: 'cm', temperature: '°C' };
export const american: ChosenUnits = { volume: 'US gal', length: 'in', temperature: '°F' };

/** Countries whose people measure in inches and gallons: CLDR supplemental data, measurement system US, from memory. */
const IN_INCHES: ReadonlySet<string> = new Set(['US', 'LR']);
/** Those that tell temperatures in °F: CLDR supplemental data, measurement of temperature US, from memory. */
const IN_FAHRENHEIT: ReadonlySet<string> = new Set(['BS', 'BZ', 'KY', 'PR', 'PW', 'US']);

/** What somebody with this locale (BCP 47) measures in; nothing where it names no country. */
export function unitsOfLocale(locale: string | undefined): ChosenUnits {
  const region = locale === undefined ? undefined : new Intl.Locale(locale).region;
  if (region === undefined) return {};
  const { volume, length } = IN_INCHES.has(region) ? american : metric;
  return { volume, length, temperature: IN_FAHRENHEIT.has(region) ? '°F' : '°C' };
}
