import { definitionOf } from '../quantity/unit.ts';
import type { Said } from './said.ts';

/** A bare side up to this beside one in feet is in feet, above the second in inches: "4ft 2 2", "4ft 18 18". Own choices. */
const MOST_FT = 4;
const LEAST_IN = 10;
/** Longer sides than this are cm: own choice, a tank of 100 inches is rare. */
const MOST_INCHES = 96;
/** Bare sides that are all this short are feet ("a 4x2x2"): own choice, no reef tank is 8 in long. */
const SURELY_FT = 8;
/** A bare side above this beside one in metres is in cm. Own choice. */
const MOST_M = 10;
/** What is measured in inches, and what in cm, where no side has a unit. */
const AMERICAN = /\b(?:inch(?:es)?|gal(?:lon)?s?|lbs?|pounds?)\b/;
const METRIC = /\b(?:cms?|centim\w+|lit(?:er|re)s?|l|ltr|kilos?|kgs?)\b/;
/** "47 5/8": nobody halves centimetres so. */
const FRACTION = /\d\s*\/\s*\d/;

/** Sides with their units as `readSize` takes them; the bare numbers where nothing tells the unit. */
export interface Sides {
  readonly text: string;
  /** Unit of a length without one beside them; undefined where it is to be asked. */
  readonly unit?: 'cm' | 'in' | 'mm';
}

/** "4ft by 18 by 18 inch": a bare side takes the unit of the next that has one, else of the last. */
export function sidesText(text: string, sides: readonly Said[], others: readonly Said[]): Sides {
  const isShort = sides.length > 1 && sides.every(({ number }) => number.value <= SURELY_FT);
  return sidesWith(sides, isShort ? 'ft' : sharedUnit(text, sides, others));
}

/** The same where no other unit is said: bare ones stay so, or are in a unit they share. */
export function sidesWith(sides: readonly Said[], shared = ''): Sides {
  const own = sides.map(({ number }) => number.unit);
  const units = sides.map(({ number: { unit, value } }, at) => {
    if (unit !== '') return unit;
    if (own.some(isMetre) && value > MOST_M) return 'cm';
    const isFeet = own.some(isFoot);
    if (isFeet && value <= MOST_FT) return 'ft';
    if (isFeet && value > LEAST_IN) return 'in';
    return own.slice(at).find((one) => one !== '') ?? own.findLast((one) => one !== '') ?? shared;
  });
  const [first = ''] = units;
  const all = sides.map(({ number }, at) => ({ number: number.number, unit: units[at] ?? '' }));
  const joined = units.every((unit) => unit === first)
    ? `${all.map(({ number }) => number).join(' x ')} ${first}`.trim()
    : all.map(({ number, unit }) => `${number} ${unit}`).join(' x ');
  return first === '' ? { text: joined } : { text: joined, unit: looseUnit(units) };
}

/** How many cm a length is, one without a unit in `unit`. */
export function cmOf({ number: { value, unit } }: Said, bare = 'cm'): number {
  const { units } = definitionOf('length');
  const found = units.find(({ names }) => names.includes(unit === '' ? bare : unit));
  return value * (found?.factor ?? 1);
}

/** A bare length beside sides in feet is in inches, beside metres in cm. */
function looseUnit(units: readonly string[]): 'cm' | 'in' | 'mm' {
  if (units.some((unit) => isFoot(unit) || isInch(unit))) return 'in';
  return units.every((unit) => unit === 'mm') ? 'mm' : 'cm';
}

function sharedUnit(text: string, sides: readonly Said[], others: readonly Said[]): 'cm' | 'in' | undefined {
  const beside = others.map(({ number }) => number.unit).filter((unit) => unit !== '');
  if (beside.some((unit) => isInch(unit) || isFoot(unit))) return 'in';
  if (beside.length > 0 || sides.some(({ number }) => number.value > MOST_INCHES)) return 'cm';
  const written = sides.map(({ number }) => text.slice(number.start, number.end));
  if (written.some((one) => FRACTION.test(one))) return 'in';
  const [isAmerican, isMetric] = [AMERICAN.test(text), METRIC.test(text)];
  return isAmerican === isMetric ? undefined : isAmerican ? 'in' : 'cm';
}

function isFoot(unit: string): boolean {
  return /^f(?:t|oo|ee)|^'/.test(unit);
}

function isMetre(unit: string): boolean {
  return /^m(?:$|et)/.test(unit);
}

function isInch(unit: string): boolean {
  return /^in|^"/.test(unit);
}
