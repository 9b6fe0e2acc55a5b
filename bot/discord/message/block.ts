import type { Table } from '../../../commands/answer.ts';
import { columns, padded, widthsOf } from '../../columns.ts';
import { codeText } from './escape.ts';

const gap = '  ';
const widestCell = 40;

/** The lines of a table in fixed-width type, its head first, columns aligned; safe inside a code block. */
export function blockLines({ head, rows }: Table): readonly string[] {
  const cells = [head, ...rows].map((row) => row.map((cell) => shortened(codeText(cell))));
  const widths = widthsOf(cells);
  return cells.map((row) =>
    row
      .map((cell, index) => padded(cell, widths[index] ?? 0))
      .join(gap)
      .trimEnd(),
  );
}

function shortened(cell: string): string {
  if (columns(cell) <= widestCell) return cell;
  let text = '';
  for (const character of cell) {
    if (columns(text + character) >= widestCell) break;
    text += character;
  }
  return `${text}…`;
}
