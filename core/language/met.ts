import { classesIn } from './lexicon/classes.ts';
import type { Scanned } from './tokens.ts';

const known = new WeakMap<Scanned, ReadonlySet<string>>();

/** Whether words of one of these classes occur in a message ("body.hand", "manner.over"); names are in lexicon/. */
export function met(scanned: Scanned, ...classes: readonly string[]): boolean {
  let found = known.get(scanned);
  if (found === undefined) {
    found = new Set(classesIn(scanned.tokens.map(({ word }) => word)).flat());
    known.set(scanned, found);
  }
  return classes.some((name) => found.has(name));
}
