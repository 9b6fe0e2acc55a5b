import type { Table } from '../answer.ts';
import { shortLimits } from './limits.ts';

const GAP = 2;

/** Columns from the left, as many as a phone shows side by side; at least one. */
export function narrowed({ head, rows }: Table): Table {
  let room = shortLimits.tableColumns + GAP;
  const kept = head.filter((title, at) => {
    const widest = Math.max(title.length, ...rows.map((row) => row[at]?.length ?? 0));
    room -= widest + GAP;
    return at === 0 || room >= 0;
  }).length;
  return { head: head.slice(0, kept), rows: rows.map((row) => row.slice(0, kept)) };
}
