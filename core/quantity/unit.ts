/**
 * The units members write, by quantity. `value in canonical unit = written x factor + offset`.
 *
 * Factors are exact by definition unless a source is named: inch, foot, US gallon, UK gallon and pound by the
 * international agreements quoted in the SI Brochure's tables (checked against the reference values 3.785411784,
 * 4.54609 and 2.54). Weights follow IUPAC 2021.
 */
import { molarMass } from './molar-mass.ts';

export interface Unit {
  /** How the unit is printed. */
  readonly symbol: string;
  /** Everything accepted for it, lower case; the symbol itself need not be repeated. */
  readonly names: readonly string[];
  readonly factor: number;
  readonly offset?: number;
  /** Said to the member whenever this spelling had to be interpreted. */
  readonly note?: string;
}

export interface QuantityDefinition {
  /** Shown in messages: "a volume". */
  readonly label: string;
  /** Symbol of the unit used inside. */
  readonly canonical: string;
  /** Accepted range in canonical units; outside it a text is refused. */
  readonly min: number;
  readonly max: number;
  readonly units: readonly Unit[];
}

/** dKH per meq/L: one German degree is 10 mg CaO per litre, CaO counts twice. = 2.80385. */
export const DKH_PER_MEQ_L = molarMass({ Ca: 1, O: 1 }) / 2 / 10;
/** mg CaCO3 per meq. = 50.043. */
export const MG_CACO3_PER_MEQ = molarMass({ Ca: 1, C: 1, O: 3 }) / 2;

const N = molarMass({ N: 1 });
const P = molarMass({ P: 1 });
/** mg NO3 per mg NO3-N. = 4.42664. */
export const NO3_PER_N = molarMass({ N: 1, O: 3 }) / N;
/** mg PO4 per mg PO4-P. = 3.06614. */
export const PO4_PER_P = molarMass({ P: 1, O: 4 }) / P;
const NH3_PER_N = molarMass({ N: 1, H: 3 }) / N;
const NO2_PER_N = molarMass({ N: 1, O: 2 }) / N;

const US_GALLON_L = 3.785411784;
const UK_GALLON_L = 4.54609;
const US_GALLON_NOTE = 'read gallons as US gallons (3.785 L); write "imp gal" for imperial ones';

const massPerLitre: readonly Unit[] = [
  { symbol: 'mg/L', names: ['mg/l', 'mg per litre', 'mg per liter', 'mgl', 'ppm'], factor: 1 },
  { symbol: 'µg/L', names: ['µg/l', 'ug/l', 'mcg/l', 'ppb'], factor: 1e-3 },
  { symbol: 'g/L', names: ['g/l'], factor: 1e3 },
];

export const quantities = {
  volume: {
    label: 'a volume',
    canonical: 'L',
    min: 1e-4,
    max: 1e6,
    units: [
      { symbol: 'L', names: ['l', 'litre', 'litres', 'liter', 'liters', 'ltr', 'ltrs', 'lt'], factor: 1 },
      {
        symbol: 'mL',
        names: ['ml', 'millilitre', 'millilitres', 'milliliter', 'milliliters', 'cc'],
        factor: 1e-3,
      },
      {
        symbol: 'm³',
        names: ['m³', 'm3', 'cubic metre', 'cubic metres', 'cubic meter', 'cubic meters'],
        factor: 1e3,
      },
      {
        symbol: 'US gal',
        names: ['us gal', 'us gallon', 'us gallons', 'usgal', 'us g', 'gal us', 'gallon us', 'gallons us'],
        factor: US_GALLON_L,
      },
      {
        symbol: 'US gal',
        names: ['gal', 'gals', 'gallon', 'gallons'],
        factor: US_GALLON_L,
        note: US_GALLON_NOTE,
      },
      {
        symbol: 'US gal',
        names: ['g'],
        factor: US_GALLON_L,
        note: 'read "g" as US gallons, since a volume is asked for; write "imp gal" for imperial ones',
      },
      {
        symbol: 'imp gal',
        names: [
          'imp gal',
          'imperial gal',
          'imperial gallon',
          'imperial gallons',
          'uk gal',
          'uk gallon',
          'uk gallons',
          'imp gallon',
          'imp gallons',
          'gal uk',
          'gal imp',
          'gallons uk',
          'gallons imperial',
        ],
        factor: UK_GALLON_L,
      },
      {
        symbol: 'US qt',
        names: ['qt', 'qts', 'quart', 'quarts', 'us qt', 'us quart', 'us quarts'],
        factor: US_GALLON_L / 4,
        note: 'read quarts as US quarts',
      },
      {
        symbol: 'US cup',
        names: ['cup', 'cups', 'us cup', 'us cups'],
        factor: US_GALLON_L / 16,
        note: 'read cups as US cups (237 mL)',
      },
      {
        symbol: 'US fl oz',
        names: ['fl oz', 'floz', 'fluid ounce', 'fluid ounces', 'us fl oz'],
        factor: US_GALLON_L / 128,
        note: 'read fluid ounces as US ones (29.6 mL)',
      },
      {
        symbol: 'imp fl oz',
        names: ['imp fl oz', 'uk fl oz', 'imperial fluid ounce', 'imperial fluid ounces'],
        factor: UK_GALLON_L / 160,
      },
      {
        symbol: 'US pt',
        names: ['pint', 'pints', 'us pint', 'us pints'],
        factor: US_GALLON_L / 8,
        note: 'read pints as US pints (473 mL)',
      },
      {
        symbol: 'imp pt',
        names: ['imp pt', 'imp pint', 'imp pints', 'imperial pint', 'imperial pints', 'uk pint', 'uk pints'],
        factor: UK_GALLON_L / 8,
      },
      {
        symbol: 'tsp',
        names: ['tsp', 'tsps', 'teaspoon', 'teaspoons'],
        factor: 0.005,
        note: 'read a teaspoon as 5 mL',
      },
      {
        symbol: 'tbsp',
        names: ['tbsp', 'tbsps', 'tablespoon', 'tablespoons'],
        factor: 0.015,
        note: 'read a tablespoon as 15 mL',
      },
    ],
  },
  mass: {
    label: 'a mass',
    canonical: 'g',
    min: 0,
    max: 1e6,
    units: [
      { symbol: 'g', names: ['g', 'gr', 'gram', 'grams', 'gramme', 'grammes'], factor: 1 },
      { symbol: 'kg', names: ['kg', 'kilo', 'kilos', 'kilogram', 'kilograms'], factor: 1e3 },
      { symbol: 'mg', names: ['mg', 'milligram', 'milligrams'], factor: 1e-3 },
      { symbol: 'oz', names: ['oz', 'ounce', 'ounces'], factor: 28.349523125 },
      { symbol: 'lb', names: ['lb', 'lbs', 'pound', 'pounds'], factor: 453.59237 },
    ],
  },
  alkalinity: {
    label: 'an alkalinity',
    canonical: 'meq/L',
    min: 0,
    max: 20,
    units: [
      {
        symbol: 'dKH',
        names: ['dkh', 'dkh°', '°dkh', 'kh', '°kh', 'degrees kh', 'dh'],
        factor: 1 / DKH_PER_MEQ_L,
      },
      { symbol: 'meq/L', names: ['meq/l', 'meq', 'meq per litre', 'meq per liter'], factor: 1 },
      {
        symbol: 'mmol/L',
        names: ['mmol/l', 'mmol'],
        factor: 1,
        note: 'read mmol/L as mmol of acid per litre, which is meq/L',
      },
      {
        symbol: 'ppm CaCO3',
        names: ['ppm caco3', 'mg/l caco3', 'ppm as caco3', 'mg/l as caco3'],
        factor: 1 / MG_CACO3_PER_MEQ,
      },
      {
        symbol: 'ppm CaCO3',
        names: ['ppm', 'mg/l'],
        factor: 1 / MG_CACO3_PER_MEQ,
        note: 'read ppm of alkalinity as mg/L of CaCO3',
      },
    ],
  },
  concentration: { label: 'a concentration', canonical: 'mg/L', min: 0, max: 1e6, units: massPerLitre },
  nitrate: {
    label: 'a nitrate reading',
    canonical: 'mg/L',
    min: 0,
    max: 1000,
    units: [
      ...massPerLitre,
      {
        symbol: 'mg/L NO3',
        names: ['mg/l no3', 'ppm no3', 'mg/l nitrate', 'ppm nitrate', 'mg/l as no3'],
        factor: 1,
      },
      {
        symbol: 'mg/L NO3-N',
        names: [
          'mg/l no3-n',
          'ppm no3-n',
          'mg/l n',
          'ppm n',
          'no3-n',
          'mg/l nitrate-n',
          'ppm nitrate-n',
          'mg/l as n',
          'ppm as n',
        ],
        factor: NO3_PER_N,
      },
    ],
  },
  phosphate: {
    label: 'a phosphate reading',
    canonical: 'mg/L',
    min: 0,
    max: 100,
    units: [
      ...massPerLitre,
      {
        symbol: 'mg/L PO4',
        names: ['mg/l po4', 'ppm po4', 'mg/l phosphate', 'ppm phosphate', 'mg/l as po4'],
        factor: 1,
      },
      { symbol: 'ppb PO4', names: ['ppb po4', 'µg/l po4', 'ug/l po4', 'ppb phosphate'], factor: 1e-3 },
      {
        symbol: 'mg/L PO4-P',
        names: [
          'mg/l po4-p',
          'ppm po4-p',
          'mg/l p',
          'ppm p',
          'po4-p',
          'mg/l as p',
          'ppm as p',
          'ppm phosphorus',
          'mg/l phosphorus',
        ],
        factor: PO4_PER_P,
      },
      {
        symbol: 'ppb P',
        names: [
          'ppb p',
          'µg/l p',
          'ug/l p',
          'ppb po4-p',
          'ppb phosphorus',
          'µg/l po4-p',
          'ug/l po4-p',
          'ppb as p',
        ],
        factor: PO4_PER_P * 1e-3,
      },
    ],
  },
  ammonia: {
    label: 'an ammonia reading',
    canonical: 'mg/L',
    min: 0,
    max: 100,
    units: [
      ...massPerLitre,
      {
        symbol: 'mg/L NH3-N',
        names: ['mg/l n', 'ppm n', 'mg/l nh3-n', 'ppm nh3-n', 'tan'],
        factor: NH3_PER_N,
      },
    ],
  },
  nitrite: {
    label: 'a nitrite reading',
    canonical: 'mg/L',
    min: 0,
    max: 1000,
    units: [
      ...massPerLitre,
      { symbol: 'mg/L NO2-N', names: ['mg/l n', 'ppm n', 'mg/l no2-n', 'ppm no2-n'], factor: NO2_PER_N },
    ],
  },
  /** On the practical scale alone; gravities and conductivities are no straight line and have their own reader. */
  salinity: {
    label: 'a salinity',
    canonical: 'ppt',
    min: 0,
    max: 42,
    units: [{ symbol: 'ppt', names: ['ppt', 'psu', 'pss', '‰', 'parts per thousand'], factor: 1 }],
  },
  temperature: {
    label: 'a temperature',
    canonical: '°C',
    min: -5,
    max: 60,
    units: [
      {
        symbol: '°C',
        names: ['°c', 'c', 'deg c', 'degc', 'celsius', 'degrees c', 'degrees celsius'],
        factor: 1,
      },
      {
        symbol: '°F',
        names: ['°f', 'f', 'deg f', 'degf', 'fahrenheit', 'degrees f', 'degrees fahrenheit'],
        factor: 5 / 9,
        offset: -160 / 9,
      },
    ],
  },
  conductivity: {
    label: 'a conductivity',
    canonical: 'mS/cm',
    min: 0,
    max: 120,
    units: [
      { symbol: 'mS/cm', names: ['ms/cm', 'ms', 'millisiemens'], factor: 1 },
      { symbol: 'µS/cm', names: ['µs/cm', 'us/cm', 'µs', 'us', 'microsiemens'], factor: 1e-3 },
      { symbol: 'S/m', names: ['s/m'], factor: 10 },
    ],
  },
  length: {
    label: 'a length',
    canonical: 'cm',
    min: 1e-3,
    max: 1e4,
    units: [
      { symbol: 'cm', names: ['cm', 'centimetre', 'centimetres', 'centimeter', 'centimeters'], factor: 1 },
      { symbol: 'mm', names: ['mm', 'millimetre', 'millimetres', 'millimeter', 'millimeters'], factor: 0.1 },
      { symbol: 'm', names: ['m', 'metre', 'metres', 'meter', 'meters'], factor: 100 },
      { symbol: 'in', names: ['in', 'inch', 'inches', '"', '″'], factor: 2.54 },
      { symbol: 'ft', names: ['ft', 'foot', 'feet', "'", '′'], factor: 30.48 },
    ],
  },
  days: {
    label: 'a length of time',
    canonical: 'days',
    min: 1e-3,
    max: 36500,
    units: [
      { symbol: 'days', names: ['d', 'day', 'days'], factor: 1 },
      { symbol: 'hours', names: ['h', 'hr', 'hrs', 'hour', 'hours'], factor: 1 / 24 },
      { symbol: 'weeks', names: ['w', 'wk', 'wks', 'week', 'weeks'], factor: 7 },
      { symbol: 'months', names: ['month', 'months'], factor: 30.4375, note: 'read a month as 30.4 days' },
      { symbol: 'years', names: ['year', 'years', 'yr', 'yrs'], factor: 365.25 },
      { symbol: 'minutes', names: ['min', 'mins', 'minute', 'minutes'], factor: 1 / 1440 },
    ],
  },
  hours: {
    label: 'hours',
    canonical: 'h',
    min: 0,
    max: 24,
    units: [
      { symbol: 'h', names: ['h', 'hr', 'hrs', 'hour', 'hours'], factor: 1 },
      { symbol: 'min', names: ['min', 'mins', 'minute', 'minutes', 'm'], factor: 1 / 60 },
    ],
  },
  light: {
    label: 'a light reading',
    canonical: 'PAR',
    min: 0,
    max: 3000,
    units: [
      {
        symbol: 'PAR',
        names: [
          'par',
          'ppfd',
          'µmol',
          'umol',
          'µmol/m2/s',
          'umol/m2/s',
          'µmol/m²/s',
          'umol/m²/s',
          'micromoles',
          'µmol m-2 s-1',
          'umol m-2 s-1',
        ],
        factor: 1,
      },
    ],
  },
  illuminance: {
    label: 'an illuminance',
    canonical: 'lux',
    min: 0,
    max: 300000,
    units: [
      { symbol: 'lux', names: ['lux', 'lx'], factor: 1 },
      { symbol: 'klux', names: ['klux', 'klx', 'kilolux'], factor: 1000 },
    ],
  },
  share: {
    label: 'a share',
    canonical: '%',
    min: 0,
    max: 100,
    units: [{ symbol: '%', names: ['%', 'percent', 'pct', 'per cent'], factor: 1 }],
  },
  ph: { label: 'a pH', canonical: '', min: 0, max: 14, units: [{ symbol: '', names: ['ph'], factor: 1 }] },
} as const satisfies Record<string, QuantityDefinition>;

export type QuantityKind = keyof typeof quantities;

export function definitionOf(kind: QuantityKind): QuantityDefinition {
  return quantities[kind];
}
