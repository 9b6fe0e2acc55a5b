const WIDE =
  /[\u1100-\u115F\u2E80-\uA4CF\uAC00-\uD7A3\uF900-\uFAFF\uFE30-\uFE6F\uFF00-\uFF60\uFFE0-\uFFE6]|\p{Emoji_Presentation}/u;

/** Columns a text takes in fixed-width type: none for a combining mark, two for East Asian wide characters and emoji. */
export function columns(text: string): number {
  let sum = 0;
  for (const character of text) sum += /\p{M}/u.test(character) ? 0 : WIDE.test(character) ? 2 : 1;
  return sum;
}

export function padded(text: string, width: number): string {
  return text + ' '.repeat(Math.max(0, width - columns(text)));
}

/** The width of each column: that of its widest cell. */
export function widthsOf(rows: readonly (readonly string[])[]): readonly number[] {
  const widths: number[] = [];
  for (const row of rows) {
    for (const [index, cell] of row.entries()) widths[index] = Math.max(widths[index] ?? 0, columns(cell));
  }
  return widths;
}
