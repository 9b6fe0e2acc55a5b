import type { Table } from '../../commands/answer.ts';
import { padded, widthsOf } from '../columns.ts';
import { plain } from './plain.ts';
import { strong, wrap, type Style } from './wrap.ts';

const GAP = '  ';
/** A last column narrower than this is not worth wrapping in. */
const NARROWEST = 24;

/** Rows in aligned columns, the last one wrapped; where the page is too narrow, each row as "first: second (third)". */
export function table(rows: readonly (readonly string[])[], style: Style): string[] {
  const cells = rows.map((row) => row.map(plain));
  return aligned(cells, style)?.flat() ?? cells.flatMap((row) => wrap(inWords(row), style.width, `${GAP}- `));
}

/** Rows under a head in aligned columns; where the page is too narrow, each row as "head: cell, head: cell". */
export function headed({ head, rows }: Table, style: Style): string[] {
  const cells = [head, ...rows].map((row) => row.map(plain));
  const [top, ...below] = aligned(cells, style) ?? [];
  if (top !== undefined) return [...strong(top, style), ...below.flat()];
  return rows.flatMap((row) =>
    wrap(row.map((cell, index) => `${head[index] ?? ''}: ${cell}`).join(', '), style.width, `${GAP}- `),
  );
}

/** The lines of each row, or undefined where the page is too narrow. */
function aligned(cells: readonly (readonly string[])[], style: Style): string[][] | undefined {
  const widths = widthsOf(cells);
  const lead = widths.slice(0, -1).reduce((sum, width) => sum + width + GAP.length, GAP.length);
  if (lead + Math.min(widths.at(-1) ?? 0, NARROWEST) > style.width) return undefined;
  return cells.map((row) => {
    const before = row.slice(0, -1).map((cell, index) => padded(cell, widths[index] ?? 0) + GAP);
    return wrap(row.at(-1) ?? '', style.width, GAP + before.join('')).map((line) => line.trimEnd());
  });
}

function inWords([first = '', second = '', third = '']: readonly string[]): string {
  return `${first}: ${second}${third === '' ? '' : ` (${third})`}`;
}
