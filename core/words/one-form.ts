import { compoundsIn } from './names.ts';
import { withTriplets } from './triplet.ts';

/** A cleaned text with the ways of writing several numbers, or a unit before its number, brought to one form. */
export function oneForm(text: string): string {
  return withParBehind(withDoseSpans(withNutrientsAsElement(withTriplets(text))));
}

/**
 * "no3-n 2.5 ppm", "po4-p is 0.03": a meter that counts only the nitrogen or the phosphorus, named before the number. The
 * name becomes the unit, since 1 mg/L NO3-N is 4.43 mg/L NO3 and 1 mg/L PO4-P is 3.07 mg/L PO4 (IUPAC 2021).
 */
function withNutrientsAsElement(text: string): string {
  return text.replace(
    /(?<!\d\s?(?:ppm|ppb|mg\/l|µg\/l)?\s+(?:of\s+)?)\b(?:(?<n>no3-n|nitrate-n|nitrate nitrogen)|po4-p|phosphate-p)\s*(?:is|at|of|=|:|reads)?\s*(?<number>\d+(?:[.,]\d+)?|[.,]\d+)\s*(?<unit>ppm|ppb|mg\/l|µg\/l|ug\/l)?(?![\w/-])/g,
    (_, ...found: readonly unknown[]) => {
      const { n, number, unit = 'ppm' } = found.at(-1) as Record<'n' | 'number' | 'unit', string | undefined>;
      return n === undefined ? `phosphate ${number} ${unit} po4-p` : `nitrate ${number} ${unit} no3-n`;
    },
  );
}

/** "par 200 for 10 hours": the unit before its number, not a span of light. */
function withParBehind(text: string): string {
  return text.replace(
    /(?<![\d.] ?)\b(?:par|ppfd)\s*(?:is|at|of|=|:|reads)?\s+(\d{2,4})(?![\d.]|\s*(?:-|to\b|or\b|par\b|ppfd\b|h\b|hours?\b|hrs?\b|%|k\b|w\b|lux\b))/g,
    '$1 par',
  );
}

/** "alk 7.5-8.5 75 gal baking soda": with a salt named and nothing about keeping a range, from the one to the other. */
function withDoseSpans(text: string): string {
  const keeps =
    /\b(?:keep|kept|range|between|hold|stays?|maintain|ok(?:ay)?|good|fine|normal|ideal|stable|steady|is (?:that|this|it)|per|each|a day)\b/;
  if (keeps.test(text) || compoundsIn(text).length === 0) return text;
  return text.replace(
    /\b((?:alk|alkalinity|d?kh|ca|calcium|mg|mag|magnesium)(?:\s+(?:from|is|at))?\s+)(\d{1,4}(?:\.\d+)?)\s?-\s?(\d{1,4}(?:\.\d+)?)(?![\d-])/g,
    (whole, lead: string, low: string, high: string) =>
      Number(low) < Number(high) ? `${lead}${low} to ${high}` : whole,
  );
}
