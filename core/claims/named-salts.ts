import { findCompound, type Compound } from '../dosing/compound.ts';
import type { NameSpan } from '../language/names.ts';

/** A salt a rule names: every form the word can mean. */
export interface NamedSalt {
  readonly label: string;
  readonly forms: readonly [Compound, ...Compound[]];
  readonly start: number;
}

/** The salts named in a rule, in order, each once. */
export function saltsIn(names: readonly NameSpan[]): readonly NamedSalt[] {
  const named = names.flatMap(({ class: kind, id, start }) => {
    const found = kind === 'salt' ? findCompound(id) : undefined;
    const [first, ...rest] = found === undefined ? [] : 'atoms' in found ? [found] : found;
    if (first === undefined) return [];
    return [{ label: rest.length === 0 ? first.name : id, forms: [first, ...rest] as const, start }];
  });
  return named.filter(({ label }, index) => named.findIndex((each) => each.label === label) === index);
}
