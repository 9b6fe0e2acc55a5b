import { Problem } from '../problem.ts';
import { clean } from '../quantity/clean.ts';
import { hasAmbiguousComma, normaliseNumbers } from '../quantity/number.ts';
import { fixed } from '../quantity/format.ts';
import { readQuantity } from '../quantity/read.ts';
import { say } from '../wording/say.ts';
import { conductivityMScm, salinityFromConductivity } from './conductivity.ts';
import { practicalFromReferenceGKg, referenceSalinityGKg } from './reference-seawater.ts';
import { densityKgM3 } from './seawater.ts';
import {
  gravityPairs,
  salinityFromHydrometer,
  specificGravity,
  type GravityPair,
} from './specific-gravity.ts';
import { scaleOf, unreadableSalinity, type SalinityScale } from './salinity-scale.ts';

/** A salinity as a member reads it. `written` is the number on `scale`, `notes` what had to be assumed. */
export interface SalinityReading {
  readonly practicalSalinity: number;
  readonly scale: SalinityScale;
  readonly written: number;
  readonly pair: GravityPair;
  /** Set where the reading was corrected for the temperature of the water. */
  readonly waterTempC: number | undefined;
  readonly notes: readonly string[];
}

export interface SalinityReadOptions {
  /** The option the text was given for; it names the Problem. */
  readonly field: string;
  /** Reference temperatures of a specific gravity; 25/25 where not given, and said. */
  readonly pair?: GravityPair | undefined;
  /**
   * Temperature (deg C) of the water read: for a conductivity not compensated to 25, or a glass hydrometer not read
   * at its own temperature. Left out: the reading is taken as already referring to its reference temperature.
   */
  readonly waterTempC?: number | undefined;
}

const NUMBER = String.raw`(?<number>\d[\d.,]*)`;
const WORDS = String.raw`(?:(?:salinity|sal|specific gravity|s\.g\.|sg|conductivity)\s*[:=]?\s*)?`;
const SHAPE = new RegExp(
  `^(?<lead>${WORDS})${NUMBER}\\s*(?<unit>[^\\d@]*?)(?:\\s*(?:@|at)\\s*(?<temp>.+))?$`,
);
const PAIR = /(?:@|\bat\b)?\s*\(?(?<!\d)(60|20|25)\s*°?\s*[cf]?\s*\/\s*(60|20|25)\s*°?\s*[cf]?\)?\s*$/;

/**
 * Reads "1.025", "1.026 sg 20/20", "35 ppt", "35 g/kg", "53 mS/cm at 25 C" or "53000 µS/cm" as a practical salinity.
 * A number without a unit is a specific gravity at 1.000 to 1.04 (or 1000 to 1040) and ppt at 30 to 42; anything else
 * is asked back. Range S 0 to 42 (2 to 42 by conductivity). Sources: fm83, m08.
 *
 * @throws Problem naming the field, with `choices` where the text can mean more than one thing.
 */
export function readSalinity(text: string, options: SalinityReadOptions): SalinityReading {
  const { field } = options;
  const given = text.trim();
  const cleaned = clean(text).replace(/^(?:~|≈|=|about |approx\.? )+\s*/, '');
  const pairText = PAIR.exec(cleaned);
  const pair = pairText === null ? options.pair : pairOf(pairText[1], pairText[2], given, field);
  const found = SHAPE.exec(cleaned.replace(PAIR, '').trim())?.groups;
  if (found === undefined) throw unreadableSalinity(field, given);
  const number = found['number'] ?? '';
  const written = Number(normaliseNumbers(number, field, 'decimal'));
  const notes = hasAmbiguousComma(number) ? [`read ${number} as ${written}`] : [];
  const temp = found['temp'];
  const waterTempC =
    temp === undefined ? options.waterTempC : readQuantity('temperature', temp, { field }).value;
  const unit = `${found['lead'] ?? ''} ${found['unit'] ?? ''}`.replace(/[:=]/g, '').trim();
  const read = scaleOf(written, unit, { field, given });
  const all = [...notes, ...read.notes];
  return toPractical({ ...read, notes: all }, { field, pair, waterTempC });
}

function pairOf(a: string | undefined, b: string | undefined, given: string, field: string): GravityPair {
  const wanted = a === '60' ? '60F/60F' : `${a}/${b}`;
  if (a === b && wanted in gravityPairs) return wanted as GravityPair;
  throw new Problem(say('salinity.threePairs'), {
    field,
    given,
    limit: Object.keys(gravityPairs).join(', '),
  });
}

interface Written {
  readonly scale: SalinityScale;
  readonly value: number;
  readonly notes: readonly string[];
}

function toPractical({ scale, value, notes }: Written, options: SalinityReadOptions): SalinityReading {
  const { field, waterTempC } = options;
  const pair = options.pair ?? '25/25';
  const whole = (practicalSalinity: number, ...more: readonly string[]): SalinityReading => {
    return { practicalSalinity, scale, written: value, pair, waterTempC, notes: [...notes, ...more] };
  };
  return naming(field, () => {
    switch (scale) {
      case 'SG': {
        const { sampleC, name } = gravityPairs[pair];
        const atC = waterTempC ?? sampleC;
        const s = salinityFromHydrometer(value, pair, atC);
        const assumed = options.pair === undefined ? 'taken as' : 'on';
        const hydrometer = `corrected as a glass hydrometer in water of ${fixed(atC, 1)} °C; leave the temperature out for a refractometer`;
        return whole(
          s,
          `specific gravity ${assumed} the scale ${name}`,
          ...(waterTempC === undefined ? [] : [hydrometer]),
        );
      }
      case 'ppt':
        return whole(densityChecked(value));
      case 'g/kg':
        return whole(practicalFromReferenceGKg(value));
      case 'mS/cm': {
        const how =
          waterTempC === undefined
            ? 'conductivity taken as compensated to 25 °C'
            : `conductivity taken as the plain value at ${fixed(waterTempC, 1)} °C`;
        return whole(salinityFromConductivity(value, waterTempC ?? 25), how);
      }
    }
  });
}

/** @throws Problem outside the range of the density formula, the widest one used here. */
function densityChecked(practicalSalinity: number): number {
  densityKgM3(practicalSalinity, 25);
  return practicalSalinity;
}

/** Lets a range Problem of a formula name the option the member filled in. */
function naming<T>(field: string, work: () => T): T {
  try {
    return work();
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
    const { given, limit, hint, choices } = error;
    throw new Problem(error.message, { field, given, limit, hint, choices });
  }
}

/**
 * The number that stands for a practical salinity on a scale: the inverse of reading it (S 0 to 42; conductivity at
 * 25 deg C from S 2). Check: 35 -> 1.02637 (25/25), 35.16504 g/kg, 53.071 mS/cm.
 */
export function onScale(
  practicalSalinity: number,
  scale: SalinityScale,
  pair: GravityPair = '25/25',
): number {
  switch (scale) {
    case 'SG':
      return specificGravity(practicalSalinity, pair);
    case 'ppt':
      return practicalSalinity;
    case 'g/kg':
      return referenceSalinityGKg(practicalSalinity);
    case 'mS/cm':
      return conductivityMScm(practicalSalinity, 25);
  }
}
