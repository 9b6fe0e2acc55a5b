/** A number as a person writes it, with whatever marks stand in it. */
const TOKEN = /(?<![\w.,])\d[\d.,]*\d(?![\w.,]*\d)|(?<![\w.,])\d(?![\d.,]*\d)/g;

/**
 * A point or comma that can only be the decimal mark: before one or two digits, behind a zero, or behind the other kind.
 * Four digits and more behind it are a machine's and say nothing of the person.
 */
const POINT_IS_DECIMAL = /^(?:\d+\.\d{1,2}|0+\.\d{3}|\d{1,3}(?:,\d{3})+\.\d+)$/;
const COMMA_IS_DECIMAL = /^(?:\d+,\d{1,2}|0+,\d{3}|\d{1,3}(?:\.\d{3})+,\d+)$/;
/** The mark that then must group thousands: "1.000", "12,500". */
const POINT_GROUPS = /^[1-9]\d{0,2}(?:\.\d{3})+$/;
const COMMA_GROUPS = /^[1-9]\d{0,2}(?:,\d{3})+$/;

const GRAVITY = /^1\.0[0-4]\d{1,2}$/;
const IS_MEASURE = /^\s*(?:m?l|lit\w+|gal\w*|us gal|imp\w* gal\w*|m[3³]|k?g|mg|ppm|mg\/l|ppb|lux|%)\b/i;

/** Whether a number is a specific gravity: nearly everybody writes it with a point, whatever else they write. */
export function isGravity(number: string, behind: string): boolean {
  return GRAVITY.test(number) && !IS_MEASURE.test(behind);
}

/**
 * Brings texts of one person and one moment to one decimal mark. Where one of them shows that the comma is the decimal
 * mark ("2,8 meq/L") and none that the point is, "1.000 L" beside it is a thousand litres and "1,350" is 1.35; and the
 * other way round. Where nothing shows it, or both do, the texts stay as they are and each is asked about or said by
 * itself (read.ts).
 *
 * Check: ["2,8 meq/L", "1.000 L"] -> ["2.8 meq/L" left as "2,8 meq/L", "1000 L"]; ["8.3", "1,350"] -> ["8.3", "1350"].
 */
export function oneMark(texts: readonly string[]): readonly string[] {
  const tokens = texts.flatMap((text) => text.match(TOKEN) ?? []);
  const isComma = tokens.some((token) => COMMA_IS_DECIMAL.test(token));
  const isPoint = tokens.some((token) => POINT_IS_DECIMAL.test(token));
  if (isComma === isPoint) return texts;
  return texts.map((text) =>
    text.replace(TOKEN, (token, offset: number) => {
      if (isPoint) return COMMA_GROUPS.test(token) ? token.replaceAll(',', '') : token;
      if (COMMA_GROUPS.test(token)) return token.split(',').length === 2 ? token.replace(',', '.') : token;
      const tail = text.slice(offset + token.length);
      return POINT_GROUPS.test(token) && !isGravity(token, tail) ? token.replaceAll('.', '') : token;
    }),
  );
}

/** "1.350", "12.500": a point before three digits of which the last is 0, which nobody writes who means a decimal. */
export const GROUPED_BY_POINT = /(?<![\d.,])([1-9]\d{0,2})\.(\d{2}0)(?![\d.,])/;

/** "1.234": a point before three digits and one digit before it: a decimal, but it may be a mark of thousands. */
export const MAY_GROUP = /(?<![\d.,])[1-9]\.\d{3}(?![\d.,])/;

/** A number of ours among a member's own: with four digits behind the point it neither shows nor takes a mark. */
export function unmarked(value: number): string {
  return value.toFixed(4);
}

/** A text with numbers of ours as they are read: without the digits that keep them unmarked. */
export function asRead(text: string): string {
  return text.replace(/\d+\.\d{4}(?!\d)/g, (number) => String(Number(number)));
}
