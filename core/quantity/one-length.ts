import { Problem } from '../problem.ts';
import { clean } from './clean.ts';

/** A product, written or implied, in the text that is worked out: sides of something. */
const PRODUCT = /\*|\)\s*[\d(]|\d\s*\(|u\d+\s+[\d(]/;

/**
 * Refuses "12 x 30 x 20 cm" as a length: multiplied it would be 72 m. `sum` is the text with its units marked, `text` as
 * it was written.
 *
 * @throws Problem that asks which of them it is.
 */
export function oneLength(sum: string, text: string, field: string): void {
  if (!PRODUCT.test(sum)) return;
  const sides = clean(text).split(/\s*[x*]\s*/);
  const unit = /[a-z"']+$/.exec(sides.at(-1) ?? '')?.[0] ?? '';
  throw new Problem('That is more than one length, and I need one.', {
    field,
    given: text.trim(),
    choices:
      sides.length < 2 ? [] : sides.map((side) => (/[a-z"']$/.test(side) ? side : `${side} ${unit}`.trim())),
  });
}
