import type { Kind } from '../../core/language/kinds.ts';
import type { SlotName } from '../../core/language/slots.ts';
import type { Row } from './row.ts';
import { dosingRows } from './rows/dosing.ts';

/** What is done with each kind of question: one row a kind. */
const rows: ReadonlyMap<Kind, Row> = new Map([...dosingRows].map((row) => [row.kind, row]));

export function rowOf(kind: Kind): Row | undefined {
  return rows.get(kind);
}

/** Slots a kind's answer rests on; none for a kind without a row. */
export function usesOf(kind: Kind): readonly SlotName[] {
  return rows.get(kind)?.uses ?? [];
}
