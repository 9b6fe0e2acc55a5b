import { classesIn, type ClassName } from './lexicon/classes.ts';
import { sentenceEnds, type Scanned, type Token } from './tokens.ts';

/** A class of the lexicon, or a name the grammar finds, whatever it is. */
export type Met = ClassName | `#${'coral' | 'salt' | 'parameter'}`;

const known = new WeakMap<Scanned, ReadonlySet<string>>();

/** Whether words of one of these classes occur in a message ("body.hand", "manner.over"); names are in lexicon/. */
export function met(scanned: Scanned, ...classes: readonly Met[]): boolean {
  let found = known.get(scanned);
  if (found === undefined) {
    found = classesOfTokens(scanned.tokens);
    known.set(scanned, found);
  }
  return classes.some((name) => found.has(name));
}

/** The same before one place of a message, in the clause that place stands in. */
export function metBefore(scanned: Scanned, start: number, ...classes: readonly Met[]): boolean {
  const before = scanned.tokens.filter((token) => token.end <= start);
  const mark = before.findLastIndex(({ word }) => sentenceEnds.has(word));
  const found = classesOfTokens(before.slice(mark + 1));
  return classes.some((name) => found.has(name));
}

/** A name of several words is of the classes of its words, too: "bubble tip anemone" is an anemone. */
function classesOfTokens(tokens: readonly Token[]): ReadonlySet<string> {
  const words = tokens.flatMap(({ word, name }) => (name === undefined ? [word] : word.split(' ')));
  const names = tokens.flatMap(({ mask, name }) => (name === undefined ? [] : [mask]));
  return new Set([...classesIn(words).flat(), ...names]);
}
