import { readQuantity } from '../../../core/quantity/read.ts';
import type { QuantityKind } from '../../../core/quantity/unit.ts';
import { attempt } from './attempt.ts';

/** What a text is worth in that quantity; undefined where it is none, as cubes are no grams. */
export function readableAs(kind: QuantityKind, text: string): number | undefined {
  return attempt(() => readQuantity(kind, text, { field: kind }).value);
}
