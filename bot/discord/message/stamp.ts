/** Two signs of Unicode's private use area stand around an instant until the text is escaped. */
const OPEN = '\u{e000}';
const CLOSE = '\u{e001}';

/** An instant in a text that is not escaped yet. */
export function stampMark(atMs: number): string {
  return `${OPEN}${Math.floor(atMs / 1000)}${CLOSE}`;
}

/** Escaped text with each marked instant as Discord's own stamp: day and time, in the zone of each reader. */
export function stamped(escaped: string): string {
  return escaped.includes(OPEN)
    ? escaped.replaceAll(/\u{e000}(-?\d+)\u{e001}/gu, '<t:$1:f>').replaceAll(/\u{e000}-?\d*/gu, '')
    : escaped;
}

/** A text that holds no mark but ours. */
export function unmarked(text: string): string {
  return text.replaceAll(/[\u{e000}\u{e001}]/gu, '');
}
