import type { NumberSpan } from './number-span.ts';

/** "(imperial, both)", "british gallons": said once of all gallons, where none is said to be American. */
export function isImperial(text: string): boolean {
  return /\b(?:imperial|imp|british|uk)\b/.test(text) && !/\b(?:us|u\.s\.|usa|american|states)\b/.test(text);
}

/** Its gallons, ounces and pints as imperial ones. */
export function asImperial(span: NumberSpan): NumberSpan {
  if (/^gal(?:lon)?s?$/.test(span.unit)) return { ...span, unit: 'imp gal' };
  if (/^(?:fl ?oz|fluid ounces?)$/.test(span.unit)) return { ...span, unit: 'imp fl oz' };
  return /^pints?$/.test(span.unit) ? { ...span, unit: 'imp pt' } : span;
}
