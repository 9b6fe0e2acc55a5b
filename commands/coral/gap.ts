import { readQuantity } from '../../core/quantity/read.ts';

/** A length between two corals, or across one, as it was written. */
export interface Gap {
  readonly cm: number;
  readonly text: string;
}

/** @throws Problem where it is no length. */
export function gapOf(text: string): Gap {
  return { cm: readQuantity('length', text, { field: 'question' }).value, text };
}
