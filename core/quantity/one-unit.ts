import { fromUnit } from './format.ts';
import { definitionOf, type QuantityKind } from './unit.ts';

/** Kinds whose units keepers write beside each other. */
const KINDS = [
  'volume',
  'length',
  'temperature',
  'mass',
  'alkalinity',
] as const satisfies readonly QuantityKind[];
/** Each rounded for people, one amount in two units differs by no more than this share of itself: 4 cm is 1.5 in. */
const ROUNDED = 0.06;

/** "75 US gal (283.9 L)", "5 cm (2 in)", "25 °C (77 °F)", "35 ppt (1.0264 SG)". */
const TWICE =
  /(\d+(?:[.,]\d+)?) ([A-Za-z°][A-Za-z °³/]*?) \((?:about )?(\d+(?:[.,]\d+)?) ([A-Za-z°][A-Za-z °³/]*?)\)/g;

/**
 * A text in which no amount stands in two units: what is in brackets behind it goes where it is the same amount again, as
 * both numbers show; of the two the shorter number stays, for that is the one somebody wrote ("4 in", of "10.2 cm (4 in)"),
 * and the first of two as long. Two scales of salinity are told apart by their names alone, for one follows from the other by the
 * equation of state (core/water) and not by a factor.
 */
export function oneUnit(text: string): string {
  if (!text.includes('(')) return text;
  return text.replace(TWICE, (whole: string, one: string, unit: string, other: string, second: string) =>
    !isSame(numberOf(one), unit, numberOf(other), second)
      ? whole
      : other.length < one.length
        ? `${other} ${second}`
        : `${one} ${unit}`,
  );
}

/** Of either decimal mark. */
function numberOf(text: string): number {
  return Number(text.replace(',', '.'));
}

const SALINITY = new Set(['ppt', 'SG']);

function isSame(one: number, unit: string, other: number, second: string): boolean {
  if (SALINITY.has(unit) && SALINITY.has(second)) return unit !== second;
  const kind = KINDS.find((each) => [unit, second].every((symbol) => isUnit(each, symbol)));
  if (kind === undefined || unit === second) return false;
  const [first, again] = [fromUnit(kind, one, unit), fromUnit(kind, other, second)];
  return Math.abs(first - again) <= ROUNDED * Math.max(Math.abs(first), Math.abs(again));
}

function isUnit(kind: QuantityKind, symbol: string): boolean {
  return definitionOf(kind).units.some((unit) => unit.symbol === symbol);
}
