import type { UnitKind } from './units.ts';

/** A number of a message: where it stands, what it is worth, and what its unit lets it be. */
export interface NumberSpan {
  readonly start: number;
  readonly end: number;
  /** Plain decimal as `readQuantity` takes it, without its unit: "1350", "8.2". */
  readonly number: string;
  readonly value: number;
  /** Upper end of a span: "7-8", "high 6s". */
  readonly high?: number;
  /** The unit for `readQuantity`; empty where there is none. */
  readonly unit: string;
  /** What the unit allows; empty for a bare number, `moment` for a time or a day. */
  readonly kinds: readonly (UnitKind | 'moment')[];
  /** True for "about", "high 6s", "well over 20". */
  readonly about?: true;
  /** A spoon fuller than level: "two heaped teaspoons". */
  readonly isHeaped?: true;
  /** Days of "a day", "per week" right behind it. */
  readonly everyDays?: number;
  /** "30ish", "x 20": how it is written, where that matters. */
  readonly form: 'digits' | 'words' | 'article' | 'moment';
}

/** The number and its unit, ready for `readQuantity`. */
export function quantityText({ number, unit, isHeaped }: NumberSpan): string {
  return unit === '' ? number : `${number} ${isHeaped === true ? 'heaped ' : ''}${unit}`;
}
