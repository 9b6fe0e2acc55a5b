import { quantityText, type NumberSpan } from './scan/number-span.ts';
import type { OfName, PartName } from './parts.ts';

/** A number of a message with the part it plays and what it is of. */
export interface Said {
  readonly part: PartName;
  readonly of: OfName;
  readonly number: NumberSpan;
  /** The number and its unit, ready for `readQuantity`. */
  readonly text: string;
  /** Probability of the part. */
  readonly probability: number;
  /** What it may be instead, where its part hangs in the balance. */
  readonly perhaps?: Pick<Said, 'part' | 'of'>;
}

export function saidAs(part: PartName, of: OfName, number: NumberSpan, probability: number): Said {
  return { part, of, number, text: quantityText(number), probability };
}

/** The same number as if its unit had been written, or another. */
export function inUnit(
  { part, of, number, probability }: Said,
  unit: string,
  kinds: NumberSpan['kinds'],
): Said {
  return saidAs(part, of, { ...number, unit, kinds }, probability);
}

/** A bare number below this is a count beside a coral, and no light of a spot. Own choice. */
const LEAST_PAR = 5;

/** Light measured: hours and per cent of a lamp are its settings. */
export function isLight({ part, of, number }: Said): boolean {
  if (number.kinds.includes('light') || number.kinds.includes('illuminance')) return true;
  const isBare = number.kinds.length === 0 && number.value >= LEAST_PAR;
  return isBare && (part === 'light' || (of === 'light' && part !== 'none'));
}
