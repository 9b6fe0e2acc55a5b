import type { Table } from '../answer.ts';

const GAP = 2;

/** Columns of a table from the left, as many as stand side by side in so many letters; at least one. */
export function narrowed({ head, rows }: Table, letters: number): Table {
  let room = letters + GAP;
  const kept = head.filter((title, at) => {
    const widest = Math.max(title.length, ...rows.map((row) => row[at]?.length ?? 0));
    room -= widest + GAP;
    return at === 0 || room >= 0;
  }).length;
  return { head: head.slice(0, kept), rows: rows.map((row) => row.slice(0, kept)) };
}
