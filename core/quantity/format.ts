import { definitionOf, type QuantityKind, type Unit } from './unit.ts';

/**
 * A number for people: `digits` significant figures, no exponent, no trailing zeros, never "-0".
 * 283.906 with 4 -> "283.9"; 0.000123 with 2 -> "0.00012".
 */
export function significant(value: number, digits = 3): string {
  if (value === 0 || !Number.isFinite(value)) return value === 0 ? '0' : 'unknown';
  if (Math.abs(value) >= MOST) return plainText(value, 0);
  // From a million on the digits behind the figures asked for say nothing.
  if (Math.abs(value) >= 1e6) return fixed(Number(value.toPrecision(Math.max(4, digits))), 0);
  const magnitude = Math.floor(Math.log10(Math.abs(value)));
  const decimals = Math.min(12, Math.max(0, digits - 1 - magnitude));
  return plainText(value, decimals);
}

/** A number with at most `decimals` places, trailing zeros and "-0" removed. */
export function fixed(value: number, decimals: number): string {
  return Number.isFinite(value) ? plainText(value, decimals) : 'unknown';
}

/** "1 reading", "0 readings", "2.5 days": a count with its word. */
export function counted(count: number, word: string): string {
  return `${count} ${word}${count === 1 ? '' : 's'}`;
}

/** "7.1 to 8.8", or one figure where both ends are printed alike. */
export function span(low: string, high: string): string {
  return low === high ? low : `${low} to ${high}`;
}

/** "from 8 dKH to 8.4 dKH", or "at 8 dKH, by less than is shown" where both are printed alike. */
export function fromTo(from: string, to: string): string {
  return from === to ? `at ${from} but for less than is shown` : `from ${from} to ${to}`;
}

/** No number of a tank is as large; its digits would say nothing, and `toFixed` turns to an exponent from 1e21 on. */
const MOST = 1e15;

function plainText(value: number, decimals: number): string {
  if (Math.abs(value) < MOST) return trimZeros(value.toFixed(decimals));
  return value < 0 ? 'under -10^15' : 'over 10^15';
}

function trimZeros(text: string): string {
  const trimmed = text.includes('.') ? text.replace(/\.?0+$/, '') : text;
  return trimmed === '-0' ? '0' : trimmed;
}

/** Grams as a scale shows them: "633 g", "6.4 g", "1.11 g", "0.31 g", "8.6 mg", "4.1 kg". Rounded by at most 2 %. */
export function mass(massG: number): string {
  if (massG >= 1000) return `${significant(massG / 1000, 3)} kg`;
  if (massG >= 100) return `${fixed(massG, 0)} g`;
  if (massG >= 3) return `${fixed(massG, 1)} g`;
  if (massG >= 0.1) return `${fixed(massG, 2)} g`;
  return `${significant(massG * 1000, 2)} mg`;
}

/** Litres: "283.9 L", "27.6 L", "1.79 L", "250 mL". */
export function volume(volumeL: number): string {
  if (volumeL < 0.9995) return `${significant(volumeL * 1000, 3)} mL`;
  return `${significant(volumeL, volumeL >= 100 ? 4 : 3)} L`;
}

/** Canonical value in the unit named, with the unit: `inUnit('alkalinity', 3, 'dKH', 2)` -> "8.41 dKH". */
export function inUnit(kind: QuantityKind, value: number, symbol: string, decimals: number): string {
  return `${fixed(toUnit(kind, value, symbol), decimals)} ${symbol}`.trim();
}

/** Canonical value as a number in the unit named. */
export function toUnit(kind: QuantityKind, value: number, symbol: string): number {
  const { offset = 0, factor } = unitOf(kind, symbol);
  return (value - offset) / factor;
}

/** A number in the unit named as canonical value: the inverse of `toUnit`. */
export function fromUnit(kind: QuantityKind, value: number, symbol: string): number {
  const { offset = 0, factor } = unitOf(kind, symbol);
  return value * factor + offset;
}

function unitOf(kind: QuantityKind, symbol: string): Unit {
  const unit = definitionOf(kind).units.find((candidate) => candidate.symbol === symbol);
  if (unit === undefined) throw new Error(`no unit ${symbol} for ${kind}`);
  return unit;
}

/** "75 US gal (283.9 L)", or only litres when it was written in litres. */
export function volumeAsWritten(volumeL: number, written: number, symbol: string): string {
  return symbol === 'L' || symbol === 'mL'
    ? volume(volumeL)
    : `${significant(written, 4)} ${symbol} (${volume(volumeL)})`;
}
