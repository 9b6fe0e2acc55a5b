import { plain } from './plain.ts';
import { columns, padded, wrap, type Style } from './wrap.ts';

const GAP = '  ';
/** A last column narrower than this is not worth wrapping in. */
const NARROWEST = 24;

/** Rows in aligned columns, the last one wrapped; where the page is too narrow, each row as "first: second (third)". */
export function table(rows: readonly (readonly string[])[], style: Style): string[] {
  const cells = rows.map((row) => row.map(plain));
  const widths: number[] = [];
  for (const row of cells) {
    for (const [index, cell] of row.entries()) widths[index] = Math.max(widths[index] ?? 0, columns(cell));
  }
  const last = widths.at(-1) ?? 0;
  const lead = widths.slice(0, -1).reduce((sum, width) => sum + width + GAP.length, GAP.length);
  if (lead + Math.min(last, NARROWEST) > style.width) {
    return cells.flatMap((row) => wrap(inWords(row), style.width, `${GAP}- `));
  }
  return cells.flatMap((row) => {
    const before = row.slice(0, -1).map((cell, index) => padded(cell, widths[index] ?? 0) + GAP);
    return wrap(row.at(-1) ?? '', style.width, GAP + before.join('')).map((line) => line.trimEnd());
  });
}

function inWords([first = '', second = '', third = '']: readonly string[]): string {
  return `${first}: ${second}${third === '' ? '' : ` (${third})`}`;
}
