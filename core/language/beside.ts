import { classesIn } from './lexicon/classes.ts';
import type { NameSpan } from './names.ts';
import type { Scanned, Token } from './tokens.ts';

const STOPS: ReadonlySet<string> = new Set(['.', '!', '?', ';', ',', 'and', 'but', 'then', 'so']);

/** The words of the part of a message a name stands in, up to the next stop or joining word on either side. */
export function clauseOf({ tokens }: Scanned, { start }: NameSpan): readonly Token[] {
  const at = tokens.findIndex((token) => token.start <= start && start < token.end);
  const before = tokens.slice(0, at).findLastIndex(isStop);
  const after = tokens.slice(at).findIndex(isStop);
  return tokens.slice(before + 1, after < 0 ? undefined : at + after + 1);
}

function isStop({ word }: Token): boolean {
  return STOPS.has(word);
}

/** The classes of the lexicon met in a part of a message. */
export function classesMet(tokens: readonly Token[]): ReadonlySet<string> {
  return new Set(classesIn(tokens.map(({ word }) => word)).flat());
}
