import { Problem } from '../problem.ts';
import { say } from '../wording/say.ts';
import { clean } from './clean.ts';

/** A product, written or implied, in the text that is worked out: sides of something. */
const PRODUCT = /\*|\)\s*[\d(]|\d\s*\(|u\d+\s+[\d(]/;

/** "60 by 45 cm" */
const BY = /\d\s*by\s*\d/i;

/**
 * Refuses "12 x 30 x 20 cm" as a length: multiplied it would be 72 m. `sum` is the text with its units marked, `text` as
 * it was written.
 *
 * @throws Problem that asks which of them it is.
 */
export function oneLength(sum: string, text: string, field: string): void {
  if (!PRODUCT.test(sum) && !BY.test(text)) return;
  const sides = clean(text).split(/\s*(?:[x*]|\bby\b)\s*/);
  const unit = /[a-z"']+$/.exec(sides.at(-1) ?? '')?.[0] ?? '';
  throw new Problem(say('convert.oneLength'), {
    field,
    given: text.trim(),
    choices:
      sides.length < 2
        ? []
        : [...new Set(sides.map((side) => (/[a-z"']$/.test(side) ? side : `${side} ${unit}`.trim())))],
  });
}
