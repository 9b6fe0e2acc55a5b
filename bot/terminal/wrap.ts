import { columns } from '../columns.ts';
import { plain } from './plain.ts';

/** How a page is set: columns to stay within, and whether headings may be bold. */
export interface Style {
  readonly width: number;
  readonly bold: boolean;
}

/**
 * Breaks text into lines of at most `width` columns; a longer word keeps a line of its own. The first line
 * begins with `first`, the others with as many spaces.
 */
export function wrap(text: string, width: number, first = ''): string[] {
  const indent = ' '.repeat(columns(first));
  const lines: string[] = [];
  let line = first;
  let used = indent.length;
  let empty = true;
  for (const word of plain(text).split(/[^\S\u00A0\u202F]+/)) {
    if (word === '') continue;
    const wide = columns(word);
    if (!empty && used + 1 + wide > width) {
      lines.push(line);
      line = indent;
      used = indent.length;
      empty = true;
    }
    line += empty ? word : ` ${word}`;
    used += empty ? wide : wide + 1;
    empty = false;
  }
  return [...lines, line];
}

/** A line or several, bold where the style allows it. */
export function strong(lines: readonly string[], style: Style): string[] {
  return style.bold ? lines.map((line) => `\u001B[1m${line}\u001B[22m`) : [...lines];
}

/** A title and the lines under it; nothing where there are no lines. */
export function section(title: string, lines: readonly string[], style: Style): string[] {
  return lines.length === 0 ? [] : ['', ...strong(wrap(title, style.width), style), ...lines];
}

/** Each text as an item of a list, marked by its place in it: `- `, `1. `, `[1] `. */
export function list(
  texts: readonly string[],
  style: Style,
  mark: (place: number) => string = () => '-',
): string[] {
  const widest = mark(texts.length).length;
  return texts.flatMap((text, index) => wrap(text, style.width, `  ${mark(index + 1).padStart(widest)} `));
}
