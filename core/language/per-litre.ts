import { quantityText } from './scan/number-span.ts';
import type { Said } from './said.ts';
import type { Scanned } from './tokens.ts';

/** "80/1", "80:1", "80 to the litre", "80 in a litre": grams of powder in a litre of solution. */
const TO_ONE = /^\s?[/:]\s?1(?:\s?l(?:it\w*)?)?(?![\d:/a-z]|[.,]\d)/;
const TO_A_LITRE =
  /^\s*(?:g\b\s*|gr\b\s*|grams?\s*)?(?:(?:of\s+)?(?:[a-z]+\s+){1,3}?)?(?:(?:to|on|in|for)\s+(?:the|a|one|1|each|every)|per)\s+l(?:it\w*)?\b/;
/** Letters between the name of a powder and the number behind it at most; own choice. */
const NEAR = 20;

/** The numbers of a message, those that tell how strong a solution of a named powder is as such; the "1" goes with them. */
export function withPerLitre(scanned: Scanned, all: readonly Said[]): readonly Said[] {
  const strong = all.flatMap((one) => {
    const end = endOf(scanned, one);
    return end === undefined ? [] : [{ one, end }];
  });
  return all.flatMap((each) => {
    const mine = strong.find(({ one }) => one === each);
    if (mine !== undefined) return [strengthOf(mine.one, mine.end)];
    const isInside = strong.some(
      ({ one, end }) => each.number.start > one.number.start && each.number.start < end,
    );
    return isInside ? [] : [each];
  });
}

/** Where such a strength ends; undefined where a number is none. */
function endOf({ text, names }: Scanned, { part, number }: Said): number | undefined {
  if (number.kinds.length > 0 && !number.kinds.includes('mass')) return undefined;
  const from = number.start + (/^[\d.,]+/.exec(text.slice(number.start))?.[0].length ?? 0);
  const found = TO_ONE.exec(text.slice(from, from + 24)) ?? TO_A_LITRE.exec(text.slice(from, from + 56));
  const isBehindPowder = names.some(
    (name) => name.class === 'salt' && name.end <= number.start && number.start - name.end < NEAR,
  );
  return found === null || !(part === 'strength' || isBehindPowder) ? undefined : from + found[0].length;
}

function strengthOf(said: Said, end: number): Said {
  const number = { ...said.number, end, unit: 'g/l', kinds: ['concentration'] as const };
  return { ...said, part: 'strength', of: 'substance', number, text: quantityText(number) };
}
