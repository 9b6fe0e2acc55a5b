import type { NumberSpan } from './scan/number-span.ts';

/** Words before and behind a number that say its unit counts the element: "phosphorus 42 ppb", "42 ppb of phosphorus". */
const BEFORE = /(?:phosphorus|po4-?p)(?![a-z])[^.;!?\d]{0,20}$/;
const BEHIND = /^\s*(?:of |as |in )?(?:phosphorus|po4-?p)(?![a-z])/;

/** A number of phosphorus as text for `readQuantity`: "42 ppb P"; undefined where phosphate was said, or the unit tells. */
export function phosphorusText(text: string, { start, end, number, unit }: NumberSpan): string | undefined {
  if (unit !== 'ppb' && unit !== 'ppm' && unit !== 'mg/l' && unit !== 'ug/l' && unit !== '\u00B5g/l')
    return undefined;
  const isP =
    BEFORE.test(text.slice(Math.max(0, start - 34), start)) || BEHIND.test(text.slice(end, end + 20));
  return isP ? `${number} ${unit} P` : undefined;
}
